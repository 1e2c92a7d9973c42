package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.plan.evening.CardNeed;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.lesson.Block;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Shortage;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Legibility;
import org.drillwright.print.text.Typefaces;
import org.drillwright.tell.ClassHead;
import org.drillwright.tell.Clock;
import org.drillwright.tell.GroupWords;
import org.drillwright.tell.LessonText;

/** The timed lesson for the hand: times, then drill by drill gear, cards, calls and cautions. Names nobody. */
public final class LessonSheet {

    static final String DEFERRAL =
            "Fencing can hurt people, and no sheet makes a drill safe. The rules of your national"
                    + " federation, local codes and a qualified instructor come before this sheet.";

    private final ClassPlan plan;
    private final School school;
    private final Type type;
    private final Flow flow;

    private LessonSheet(ClassPlan plan, School school, String mark, Typefaces faces, Paper paper) {
        this.plan = plan;
        this.school = school;
        this.type = Type.ofCapitals(faces, Legibility.inTheHand());
        this.flow = new Flow(paper, Feet.of(type, paper, Feet.mark(mark), school.name(), ClassHead.date(plan)));
    }

    /** @param mark of the plan that hangs; empty if none does */
    public static List<Frame> pages(
            ClassPlan plan, PairingPlan pairs, School school, SheetSize size, String mark, Typefaces faces) {
        LessonSheet sheet = new LessonSheet(plan, school, mark, faces, Paper.upright(size));
        List<CardNeed> cards = CardNeed.of(school, plan, pairs);
        sheet.times();
        sheet.toKnow(pairs);
        for (Drill drill : plan.inOrder()) {
            sheet.drill(
                    drill,
                    cards.stream()
                            .filter(need -> need.drill().equals(drill.id()))
                            .findFirst());
        }
        sheet.flow.add(sheet.type.paragraph(Role.PARAGRAPH, Face.BOLD, DEFERRAL, sheet.flow.width()));
        return sheet.flow.pages();
    }

    private void times() {
        double width = flow.width();
        flow.add(type.times(1.6).paragraph(Role.TITLE, Face.BOLD, "Lesson of " + ClassHead.date(plan), width));
        flow.add(type.paragraph(
                Role.PARAGRAPH, Face.REGULAR, ClassHead.of(plan) + ". " + LessonText.sentence(plan.lesson()), width));
        Columns table = Columns.shared(type, width, 2, 9, 2, 7);
        List<Piece> rows = new ArrayList<>();
        for (Block block : plan.lesson().blocks()) {
            rows.add(table.row(
                    List.of(
                            Clock.of(block.start()),
                            LessonText.name(block, plan),
                            Clock.of(block.length()),
                            LessonText.work(block, plan)),
                    rows.size() % 2 == 1));
        }
        flow.table(List.of(), table.head(List.of("From", "Part", "Lasts", "Work")), rows);
        flow.add(Piece.space(type.size()));
    }

    private void toKnow(PairingPlan pairs) {
        List<String> sentences = new ArrayList<>(plan.remarks());
        sentences.addAll(plan.lesson().moved());
        sentences.addAll(plan.lesson().advice());
        for (Shortage shortage : pairs.shortages()) {
            sentences.add(plan.title(shortage.drill()) + ": " + shortage.sentence());
        }
        sentences.addAll(GroupWords.threes(pairs, plan::repetitions));
        if (!sentences.isEmpty()) {
            flow.add(type.paragraph(Role.PARAGRAPH, Face.BOLD, "To know", flow.width()));
            sentences.forEach(sentence -> flow.add(type.item(sentence, flow.width())));
            flow.add(Piece.space(type.size()));
        }
    }

    private void drill(Drill drill, Optional<CardNeed> cards) {
        double width = flow.width();
        List<Piece> caption = new ArrayList<>();
        caption.add(type.times(1.15).band(Role.TITLE, start(drill) + "  " + drill.title(), width));
        caption.add(type.labelled("Gear", String.join(", ", school.gearOf(drill)), width));
        cards.ifPresent(need -> caption.add(type.labelled("Cards", need.sentence(), width)));
        if (!drill.opening().isBlank()) {
            caption.add(type.labelled("Opening", drill.opening(), width));
        }
        Columns table = Columns.shared(type, width, 3, 7, 7, 4);
        List<Piece> rows = new ArrayList<>();
        for (int at = 0; at < drill.steps().size(); at++) {
            rows.add(row(table, drill.steps().get(at), at + 1));
        }
        flow.table(caption, table.head(List.of("Call", "Leader", "Follower", "Distance")), rows);
        flow.add(Piece.space(0.4 * type.size()));
        if (!drill.closing().isBlank()) {
            flow.add(type.labelled("Closing", drill.closing(), width));
        }
        cautions(drill).forEach(caution -> flow.add(type.item(caution, width)));
        flow.add(Piece.space(type.size()));
    }

    private String start(Drill drill) {
        return plan.lesson().blocks().stream()
                .filter(block ->
                        block.kind() == Block.Kind.DRILL && block.name().equals(drill.id()))
                .map(block -> Clock.of(block.start()))
                .findFirst()
                .orElse("");
    }

    private static Piece row(Columns table, Step step, int count) {
        int number = step.number().orElse(count);
        return table.row(
                List.of(
                        step.call().isBlank() ? String.valueOf(number) : number + ": " + step.call(),
                        step.leader().map(Turn::say).orElse(""),
                        step.follower().map(Turn::say).orElse(""),
                        step.distance()),
                count % 2 == 0);
    }

    /** The drill's cautions, then the safety notes of its counts, each once. */
    private static Set<String> cautions(Drill drill) {
        Set<String> cautions = new LinkedHashSet<>(drill.cautions());
        for (int at = 0; at < drill.steps().size(); at++) {
            Step step = drill.steps().get(at);
            if (!step.safety().isBlank()) {
                cautions.add("On " + step.number().orElse(at + 1) + ": " + step.safety());
            }
        }
        return cautions;
    }
}
