package org.drillwright.editing;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.autofix.Edit;
import org.drillwright.check.Subject;
import org.drillwright.check.Suggestions;
import org.drillwright.check.safety.NoTrueDistance;
import org.drillwright.formatter.Scalars;
import org.drillwright.model.Drill;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.notation.Action;
import org.drillwright.notation.Measure;
import org.drillwright.notation.MeasureCue;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.read.Shape;
import org.drillwright.reading.TermKind;
import org.drillwright.schema.FileForm;
import org.drillwright.school.FileKind;
import org.drillwright.school.SchoolFolder;
import org.drillwright.source.FieldPath;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;

/** What may be written at a place of a file: keys, words, drills, and the turns that the played phrase leaves open. */
public final class Completion {

    private static final Pattern STEP = Pattern.compile("steps/(\\d+)/(leader|follower|distance)(/means|/say)?");

    /** Stands for what is being written while the rest of the file is read. */
    private static final String BLANK = "Hold.";

    private final SchoolFolder school;
    private final Path path;
    private final SourceFile file;
    private final Optional<FileForm> form;
    private final Cursor cursor;
    private final List<Offer> offers = new ArrayList<>();

    private Completion(SchoolFolder school, Path path, SourceFile file, Optional<FileForm> form, Cursor cursor) {
        this.school = school;
        this.path = path;
        this.file = file;
        this.form = form;
        this.cursor = cursor;
    }

    /**
     * The offers at an offset, the likeliest first.
     *
     * @param path where the file lies
     * @param file its text as it is being written
     * @param form what such a file may hold, if that is known
     */
    public static List<Offer> at(
            SchoolFolder school, FileKind kind, Path path, SourceFile file, Optional<FileForm> form, int offset) {
        Completion completion = new Completion(school, path, file, form, Cursor.at(file, offset));
        completion.offer(kind);
        return completion.offers.stream().distinct().toList();
    }

    private void offer(FileKind kind) {
        FieldPath at = cursor.path();
        if (cursor.onKey() && !NameIndex.DRILLS.isName(kind, at) && mayHaveKeys(at)) {
            if (NameIndex.DRILLS.areKeys(kind, at)) {
                drills(true);
            } else {
                keys();
            }
            return;
        }
        if (NameIndex.DRILLS.isName(kind, at)) {
            drills(false);
        }
        if (kind == FileKind.DRILL) {
            ofDrill();
        }
        form.ifPresent(known -> {
            known.shape(at).ifPresent(shape -> words(shape).forEach(word -> word(word, Message.none())));
            if (kind != FileKind.DRILL || !STEP.matcher(at.text()).matches()) {
                known.offered(at).forEach(this::word);
            }
        });
    }

    private boolean mayHaveKeys(FieldPath at) {
        return form.isEmpty()
                || form.flatMap(known -> known.shape(at))
                        .flatMap(FileForm::group)
                        .isPresent();
    }

    private void keys() {
        form.flatMap(known -> known.shape(cursor.path()))
                .flatMap(FileForm::group)
                .ifPresent(group -> group.keys().forEach(this::key));
        form.map(known -> known.chosen(cursor.path()))
                .orElse(Map.of())
                .forEach((key, told) -> add(Offer.Kind.KEY, key, Message.none(), told, key + ": "));
    }

    private void key(String key, Shape value) {
        if (!cursor.siblings().contains(key)) {
            boolean deep = value instanceof Shape.Group || value instanceof Shape.Items;
            Message told =
                    form.flatMap(known -> known.told(cursor.path().key(key))).orElse(Message.none());
            add(Offer.Kind.KEY, key, Message.none(), told, key + (deep ? ":" : ": "));
        }
    }

    private static List<String> words(Shape shape) {
        if (shape instanceof Shape.Word word) {
            return word.known();
        }
        return shape == Shape.Value.YES_OR_NO ? List.of("yes", "no") : List.of();
    }

    private void word(String word, Message told) {
        if (offers.stream().noneMatch(offer -> offer.label().equals(word))) {
            add(Offer.Kind.WORD, word, Message.none(), told, written(word));
        }
    }

    /** @param asKeys whether they are written in front of a colon */
    private void drills(boolean asKeys) {
        school.entries().stream()
                .filter(entry -> !entry.file().equals(path))
                .flatMap(entry -> entry.subject().stream())
                .map(Subject::drill)
                .forEach(drill -> add(
                        Offer.Kind.DRILL,
                        drill.id(),
                        Message.plain(drill.title()),
                        Message.plain(drill.purpose()),
                        written(drill.id()) + (asKeys ? ": " : "")));
    }

    private void ofDrill() {
        Matcher step = STEP.matcher(cursor.path().text());
        if (step.matches()) {
            int count = Integer.parseInt(step.group(1));
            blank().filter(drill -> count < drill.drill().steps().size())
                    .ifPresent(drill -> inStep(drill, count, step.group(2)));
            return;
        }
        String part = cursor.path().text();
        switch (part) {
            case "start" -> {
                elsewhere(Drill::start);
                blank().ifPresent(this::guards);
            }
            case "opening" -> elsewhere(Drill::opening);
            case "closing" -> elsewhere(Drill::closing);
            default -> {}
        }
    }

    /** The drill as it reads with something harmless in place of what is being written. */
    private Optional<Subject> blank() {
        String text = Edit.apply(file.text(), List.of(edit(BLANK)));
        return school.drill(path, text);
    }

    private void inStep(Subject drill, int step, String key) {
        if (key.equals("distance")) {
            distances(drill.rewritten(without(drill.drill(), step, key), drill.file(), drill.places()), step);
        } else if (drill.isPartnerDrill()) {
            Side side = key.equals(Side.LEADER.word()) ? Side.LEADER : Side.FOLLOWER;
            Subject open = drill.rewritten(without(drill.drill(), step, key), drill.file(), drill.places());
            Suggestions.open(open, step, side).forEach(this::turn);
            turn(drill.said(List.of(new Action.Answer(Action.Reply.HOLD, Stance.UNSTATED))));
        } else if (key.equals(Side.FOLLOWER.word())) {
            actions(drill);
        }
    }

    private void turn(String words) {
        add(Offer.Kind.TURN, words, Message.none(), Message.none(), written(words));
    }

    /** What a class may do on its own, as orders of the drill's language. */
    private void actions(Subject drill) {
        drill.reader().glossary().items().stream()
                .filter(item -> item.term().kind().isAction() && item.term().kind() != TermKind.COURTESY)
                .flatMap(item -> item.in(drill.tongue()).stream().limit(1))
                .map(words -> Message.plain(words).sentence().english())
                .forEach(this::turn);
    }

    private static Drill without(Drill drill, int at, String key) {
        List<Step> steps = new ArrayList<>(drill.steps());
        Step step = steps.get(at);
        Optional<Turn> leader = key.equals("leader") ? Optional.empty() : step.leader();
        Optional<Turn> follower = key.equals("follower") ? Optional.empty() : step.follower();
        String distance = key.equals("distance") ? "" : step.distance();
        steps.set(at, new Step(step.number(), step.call(), leader, follower, distance, step.safety(), step.note()));
        return drill.withSteps(steps);
    }

    /** The measures of the drill's language, that of the count first. */
    private void distances(Subject drill, int step) {
        NoTrueDistance.toWrite(drill, step)
                .ifPresent(cue -> add(
                        Offer.Kind.WORD,
                        cue,
                        Message.of(Completion.class, "offer.played"),
                        Message.none(),
                        written(cue)));
        Stream.of(Measure.values())
                .map(measure -> drill.reader().cue(new MeasureCue(measure, measure), drill.tongue()))
                .forEach(word -> word(word, Message.none()));
    }

    /** How other drills of the school have it, those of the most drills first. */
    private void elsewhere(Function<Drill, String> part) {
        Map<String, Integer> texts = new LinkedHashMap<>();
        school.entries().stream()
                .filter(entry -> !entry.file().equals(path))
                .flatMap(entry -> entry.subject().stream())
                .map(subject -> part.apply(subject.drill()))
                .filter(text -> !text.isEmpty())
                .forEach(text -> texts.merge(text, 1, Integer::sum));
        texts.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .forEach(text -> add(
                        Offer.Kind.TURN,
                        text.getKey(),
                        Message.of(Completion.class, "offer.elsewhere"),
                        Message.none(),
                        written(text.getKey())));
    }

    private void guards(Subject drill) {
        for (Position position : Position.values()) {
            Stance stance = Stance.in(position);
            turn(drill.said(List.of(new Action.OnGuard(stance))));
        }
    }

    private String written(String text) {
        return Scalars.of(text, cursor.bracketed(), true);
    }

    private void add(Offer.Kind kind, String label, Message detail, Message told, String text) {
        offers.add(new Offer(kind, label, detail, told, edit(text)));
    }

    /** A text where the cursor is; behind the colon of a key it needs a space. */
    private Edit edit(String text) {
        Span replaced = cursor.word();
        boolean joined = replaced.start() > 0 && file.text().charAt(replaced.start() - 1) == ':';
        return new Edit(replaced, joined ? " " + text : text);
    }
}
