package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.evening.CardNeed;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.lesson.LessonPart;
import org.drillwright.plan.lesson.LessonPart.Kind;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;
import org.drillwright.report.plan.Clock;

/**
 * The timed lesson for the hand: the class as a bar, then part by part when it begins and how long it lasts, with the
 * counts of each drill. What all drills have alike is said once. Names nobody.
 */
public final class LessonSheet {

    private final ClassPlan plan;
    private final PairingPlan pairs;
    private final School school;
    private final HandWords words;
    private final LessonSentences sentences;
    private final HandType type;
    private final double width;
    private final Flow flow;

    private LessonSheet(ClassPlan plan, PairingPlan pairs, School school, String mark, HandType type, Sheet sheet) {
        this.plan = plan;
        this.pairs = pairs;
        this.school = school;
        this.words = HandWords.in(school.language());
        this.sentences = new LessonSentences(plan, words);
        this.type = type;
        this.width = sheet.inner();
        String document = Foot.line(
                words.mark(mark),
                school.name(),
                words.evening().day(plan.brief().date()));
        this.flow = new Flow(sheet, 1, Foot.of(type.foot(), sheet, words.text(HandWord.DEFERRAL), document));
    }

    /** @param mark of the plan that hangs; empty if none does */
    public static List<Frame> pages(
            ClassPlan plan, PairingPlan pairs, School school, SheetSize size, String mark, Typefaces faces) {
        Sheet paper = Sheet.upright(size, Sheet.HELD);
        LessonSheet sheet = new LessonSheet(plan, pairs, school, mark, new HandType(faces), paper);
        sheet.head();
        sheet.toKnow();
        sheet.parts();
        return Mirrored.pages(sheet.flow.pages(), school.language().locale(), faces);
    }

    /** The date, as large as the room that is left for the time of day allows. */
    private void head() {
        String said = words.of(HandWord.LESSON_OF, plan.brief().date());
        String begins = words.text(HandWord.BEGINS_AT);
        Type small = type.words();
        double x = width - small.width(Face.REGULAR, begins);
        boolean large = type.heading().width(Face.BOLD, said) + small.size() <= x;
        Box title = (large ? type.heading() : type.time()).title(said, x - small.size());
        Node begin = new Node.Words(
                Role.PARAGRAPH,
                List.of(small.line(Face.REGULAR, begins, x, type.heading().size())));
        flow.add(Box.abreast(List.of(title.padded(-6), Box.of(0, begin))));
        shared();
    }

    /** What is said of the class as a whole, and the class as a bar. */
    private void shared() {
        String whole = words.text(HandWord.WHOLE, sentences.people(), sentences.mode(), sentences.time());
        List<Styled> said = new ArrayList<>(List.of(new Styled(whole, Face.REGULAR)));
        said.addAll(shared(Label.GEAR, this::gear));
        said.addAll(shared(Label.OPENING, Drill::opening));
        said.addAll(shared(Label.CLOSING, Drill::closing));
        flow.add(type.notes().paragraph(said, width));
        flow.add(new LessonBar(sentences, type, width).block());
    }

    private String gear(Drill drill) {
        return String.join(", ", school.gearOf(drill));
    }

    /** What more than half of the drills have alike; with one drill there is nothing to be alike. */
    private Optional<String> common(Function<Drill, String> part) {
        List<String> said = plan.inOrder().stream().map(part).toList();
        return said.stream()
                .filter(one -> said.size() > 1 && 2 * Collections.frequency(said, one) > said.size())
                .findFirst();
    }

    /** It, and the numbers of the drills that have something else. */
    private List<Styled> shared(Label label, Function<Drill, String> part) {
        List<Drill> drills = plan.inOrder();
        return common(part)
                .map(said -> {
                    String others = IntStream.range(0, drills.size())
                            .filter(at -> !part.apply(drills.get(at)).equals(said))
                            .mapToObj(at -> String.valueOf(at + 1))
                            .collect(Collectors.joining(", "));
                    String what = words.labels().text(label);
                    return labelled(
                            others.isEmpty()
                                    ? words.text(HandWord.FOR_ALL, what)
                                    : words.text(HandWord.FOR_ALL_BUT, what, others),
                            said);
                })
                .orElse(List.of());
    }

    /** What a drill has for itself. */
    private List<Styled> own(Label label, Function<Drill, String> part, Drill drill) {
        String said = part.apply(drill);
        return common(part).filter(said::equals).isPresent()
                ? List.of()
                : labelled(words.labels().text(label), said);
    }

    private static List<Styled> labelled(String what, String said) {
        return said.isBlank() ? List.of() : List.of(new Styled(what, Face.BOLD), new Styled(said, Face.REGULAR));
    }

    private void toKnow() {
        for (String sentence : sentences.toKnow(pairs)) {
            List<Styled> said =
                    List.of(new Styled(words.text(HandWord.TO_KNOW), Face.BOLD), new Styled(sentence, Face.REGULAR));
            flow.add(type.notes().paragraph(said, width));
        }
    }

    private void parts() {
        List<CardNeed> cards = CardNeed.of(school, plan, pairs);
        List<Styled> others = new ArrayList<>();
        int drills = 0;
        for (LessonPart part : plan.lesson().blocks()) {
            Optional<Drill> drill = part.kind() == Kind.DRILL
                    ? plan.inOrder().stream()
                            .filter(one -> one.id().equals(part.name()))
                            .findFirst()
                    : Optional.empty();
            if (drill.isPresent()) {
                others(others);
                drills++;
                flow.together(drill(part, drills, drill.get(), cards));
            } else {
                others.add(new Styled(Clock.of(part.start()), Face.BOLD));
                others.add(new Styled(sentences.timed(part), Face.REGULAR));
            }
        }
        others(others);
    }

    /** Parts without drills, one behind the other. */
    private void others(List<Styled> parts) {
        if (!parts.isEmpty()) {
            flow.add(type.notes()
                    .paragraph(parts, width)
                    .moved(0, 3)
                    .padded(1)
                    .on(LineWeight.HEAVY.across(0, width, 0)));
            parts.clear();
        }
    }

    private List<Box> drill(LessonPart part, int number, Drill drill, List<CardNeed> cards) {
        String work = Foot.line(
                sentences.work(part),
                cards.stream()
                        .filter(need -> need.drill().equals(drill.id()))
                        .map(sentences::cards)
                        .findFirst()
                        .orElse(""));
        List<Styled> before = new ArrayList<>();
        before.addAll(own(Label.GEAR, this::gear, drill));
        before.addAll(own(Label.OPENING, Drill::opening, drill));
        before.addAll(labelled(words.labels().text(Label.START), drill.start()));
        before.addAll(own(Label.CLOSING, Drill::closing, drill));
        return new LessonDrill(type, width, words)
                .blocks(
                        new LessonDrill.Head(
                                Clock.of(part.start()),
                                Clock.of(part.length()),
                                number + " " + drill.title(),
                                rounds(drill)),
                        work,
                        before,
                        drill);
    }

    private String rounds(Drill drill) {
        List<Integer> rounds = pairs.rounds().stream()
                .filter(round -> round.drill().equals(drill.id()))
                .map(Round::number)
                .toList();
        if (rounds.size() < 2) {
            return rounds.isEmpty() ? "" : words.text(HandWord.ROUND, rounds.get(0));
        }
        return words.text(HandWord.ROUNDS, rounds.get(0), rounds.get(rounds.size() - 1));
    }
}
