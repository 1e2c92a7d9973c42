package org.drillwright.check;

import java.lang.ref.WeakReference;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.drillwright.mark.PrintMark;
import org.drillwright.model.Drill;
import org.drillwright.model.Form;
import org.drillwright.model.Hands;
import org.drillwright.model.Level;
import org.drillwright.model.School;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.Rehearsal;
import org.drillwright.phrase.Replay;
import org.drillwright.reading.TurnReader;
import org.drillwright.source.FieldPath;
import org.drillwright.source.SourceFile;
import org.drillwright.source.SourcePlaces;
import org.drillwright.source.Span;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/**
 * What a rule looks at: a drill with its places, what its words were read as, and the school around it. The drill is
 * played when somebody asks, and what was played is let go when nobody looks at it any more: a school has thousands of
 * drills, and one at a time is looked at.
 */
public final class Subject {

    private static final Written NOTHING = Written.asItStands("", 0);

    private final Drill drill;
    private final SourceFile file;
    private final SourcePlaces places;
    private final Surroundings surroundings;
    private final Optional<Subject> original;
    private volatile WeakReference<Performance> performed = new WeakReference<>(null);
    private volatile Optional<TurnReader> read = Optional.empty();
    private volatile Optional<Coverage> covered = Optional.empty();
    private volatile Optional<PrintMark> marked = Optional.empty();
    private volatile OptionalInt hashed = OptionalInt.empty();

    /**
     * @param drill as it was read
     * @param file the file it was read from
     * @param places where each of its values stands
     * @param surroundings the school and its other drills
     */
    public Subject(Drill drill, SourceFile file, SourcePlaces places, Surroundings surroundings) {
        this(drill, file, places, surroundings, Optional.empty());
    }

    /** @param original the drill that this one says in other words, from which it is played */
    private Subject(
            Drill drill, SourceFile file, SourcePlaces places, Surroundings surroundings, Optional<Subject> original) {
        this.original = original;
        this.drill = drill;
        this.file = file;
        this.places = places;
        this.surroundings = surroundings;
    }

    /** The same drill, played by other hands. */
    public Subject withHands(Hands hands) {
        return new Subject(drill.withHands(hands), file, places, surroundings);
    }

    /** The same drill in its school as it is now, where nothing has changed that bears on the drill. */
    public Subject in(Surroundings now) {
        Subject moved = new Subject(drill, file, places, now);
        moved.covered = covered;
        moved.hashed = hashed;
        moved.marked = marked;
        return moved;
    }

    /** The drill as it would be with its file written otherwise, in the same school. */
    public Subject rewritten(Drill other, SourceFile otherFile, SourcePlaces otherPlaces) {
        return new Subject(other, otherFile, otherPlaces, surroundings);
    }

    /**
     * The same drill in other words that mean the same, such as those of another language. It is played as this one is,
     * and its places are those of this one's words.
     *
     * @param other the drill in those words
     * @param there the school as it is called in them
     */
    public Subject told(Drill other, School there) {
        return new Subject(other, file, places, surroundings.called(there), Optional.of(this));
    }

    /** The mark of the drill's card in its school. */
    public PrintMark mark() {
        if (marked.isEmpty()) {
            marked = Optional.of(PrintMark.of(drill, school()));
        }
        return marked.get();
    }

    /** The hash of {@link TurnWords}, which need not be held themselves: most drills have another. */
    public int turnsHash() {
        if (hashed.isEmpty()) {
            hashed = OptionalInt.of(TurnWords.of(drill).hashCode());
        }
        return hashed.getAsInt();
    }

    public SourcePlaces places() {
        return places;
    }

    public Drill drill() {
        return drill;
    }

    public SourceFile file() {
        return file;
    }

    public School school() {
        return surroundings.school();
    }

    /** Reads words as the drill's own are read. */
    public TurnReader reader() {
        if (read.isEmpty()) {
            read = Optional.of(surroundings.reader(drill));
        }
        return read.get();
    }

    /** Words of a room that are to be typed into the drill: in its language, whoever reads the sentence that they stand in. */
    public Message typed(Class<?> room, String key, Object... values) {
        return Message.of(room, key, values).always(Locale.forLanguageTag(tongue()));
    }

    /** The tag of the language that most of its turns are read in; the first that is read, if none is told anything. */
    public String tongue() {
        Map<String, Integer> told = new HashMap<>();
        for (Place turn : turns()) {
            String words = turnWords(turn.step(), turn.side()).text();
            if (!words.isBlank()) {
                told.merge(reader().tag(words), 1, Integer::sum);
            }
        }
        List<String> tags = reader().tags();
        return tags.stream()
                .reduce((one, other) -> told.getOrDefault(other, 0) > told.getOrDefault(one, 0) ? other : one)
                .orElseThrow();
    }

    /**
     * Where a turn stands.
     *
     * @param step the count, numbered from 0
     */
    public record Place(int step, Side side) {}

    /** The places of all turns, count after count, the leader's before the follower's; empty turns too. */
    public List<Place> turns() {
        List<Place> turns = new ArrayList<>();
        for (int step = 0; step < drill.steps().size(); step++) {
            for (Side side : Side.values()) {
                turns.add(new Place(step, side));
            }
        }
        return turns;
    }

    /** Actions as they could be told in this drill, in its language. */
    public String said(List<Action> actions) {
        return reader().said(actions, tongue());
    }

    /** All drills of the folder by their ids, this one among them. */
    public Map<String, Drill> others() {
        return surroundings.drills();
    }

    /** The drill's level; the first of the school if the drill names none that exists. */
    public Level level() {
        return school().level(drill.level()).orElse(school().levels().get(0));
    }

    /** Whether a file of that id is there that could not be read. */
    public boolean isUnread(String id) {
        return surroundings.unread().contains(id);
    }

    /** Whether the drill's needs may lead back to itself. */
    public boolean mayCircle() {
        return surroundings.circling().contains(drill.id());
    }

    private Performance performance() {
        if (original.isPresent()) {
            return original.get().performance();
        }
        Performance known = performed.get();
        if (known != null) {
            return known;
        }
        Performance played = Performance.of(this);
        performed = new WeakReference<>(played);
        return played;
    }

    /** What the drill's words were read as. */
    public Script script() {
        return performance().script();
    }

    /** The drill as it was played. */
    public Replay replay() {
        return performance().replay();
    }

    /** For playing it in other words. */
    Rehearsal rehearsal() {
        return performance().rehearsal();
    }

    /** What the phrase refused, each in its place. */
    public List<Fault> faults() {
        return performance().faults();
    }

    /** Which counts could be judged; found out once, for it is asked of all drills when they have been judged. */
    public Coverage coverage() {
        if (covered.isEmpty()) {
            covered = Optional.of(Coverage.of(this));
        }
        return covered.get();
    }

    public boolean isPartnerDrill() {
        return drill.form() == Form.PARTNER;
    }

    /** What one side's turn was read as. */
    public Utterance turn(int step, Side side) {
        return script().turn(step, side);
    }

    /** The words of a turn that carry its meaning, with their places; empty if the side has none. */
    public Written turnWords(int step, Side side) {
        FieldPath path = turnPath(step, side);
        Written means = words(path.key("means"));
        return means.text().isEmpty() ? printedWords(step, side) : means;
    }

    /** The words of a turn that are printed, with their places; empty if the side has none. */
    public Written printedWords(int step, Side side) {
        FieldPath path = turnPath(step, side);
        Written say = words(path.key("say"));
        return say.text().isEmpty() ? words(path) : say;
    }

    private static FieldPath turnPath(int step, Side side) {
        return stepPath(step).key(side.word());
    }

    /** The words of a text of the drill, with their places; empty if it is absent. */
    public Written words(FieldPath path) {
        return places.words(path).orElse(NOTHING);
    }

    /** Whether a key's value could not be read, so that nothing may rest on it. */
    public boolean isLost(String key) {
        return places.lost().contains(FieldPath.of(key));
    }

    /** The drill in each way that it may be meant, where its level, form, weapon or hands could not be read. */
    public List<Subject> meanings() {
        Stream<Drill> drills = Stream.of(drill);
        if (isLost("level")) {
            drills = drills.flatMap(one -> school().levels().stream().map(level -> one.withLevel(level.name())));
        }
        if (isLost("form")) {
            drills = drills.flatMap(one -> Stream.of(Form.values()).map(one::withForm));
        }
        if (isLost("weapon")) {
            drills = drills.flatMap(one -> Stream.of(Weapon.values()).map(one::withWeapon));
        }
        if (isLost("hands")) {
            drills = drills.flatMap(one -> Stream.of(Hands.values()).map(one::withHands));
        }
        return drills.map(one -> rewritten(one, file, places)).toList();
    }

    /** What all counts rest on and could not be read, in words. */
    List<Message> unknownThroughout() {
        return Stream.of("form", "weapon", "hands")
                .filter(this::isLost)
                .map(key -> Message.of(Subject.class, "unknown." + key))
                .toList();
    }

    /** The place of a value, or of what is around it. */
    public Span span(FieldPath path) {
        return places.span(path);
    }

    /** Whether the file holds that key, be it with nothing in it. */
    public boolean isWritten(FieldPath path) {
        return places.field(path).isPresent();
    }

    /** The place of a key's own words, or of what is around it. */
    public Span keySpan(FieldPath path) {
        return places.field(path).map(field -> field.key()).orElseGet(() -> places.span(path));
    }

    /** The place of a value in a count, or of the count's first key if the value is absent. */
    public Span spanInStep(int step, String key) {
        return places.field(stepPath(step).key(key))
                .map(field -> field.value())
                .orElseGet(() -> places.field(stepPath(step))
                        .map(field -> new Span(field.value().start(), endOfFirstLine(field.value())))
                        .orElse(Span.at(0)));
    }

    private int endOfFirstLine(Span span) {
        int end = file.text().indexOf('\n', span.start());
        return end < 0 || end > span.end() ? span.end() : end;
    }

    /** The path of a count, numbered from 0. */
    public static FieldPath stepPath(int step) {
        return FieldPath.of("steps").item(step);
    }

    /** How a count is called in a sentence: by its written number, or by its place from 1. */
    public int count(int step) {
        return drill.steps().get(step).number().orElse(step + 1);
    }

    public Optional<Step> step(int step) {
        return step < drill.steps().size() ? Optional.of(drill.steps().get(step)) : Optional.empty();
    }
}
