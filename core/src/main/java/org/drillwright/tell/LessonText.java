package org.drillwright.tell;

import java.util.List;
import java.util.Optional;
import org.drillwright.plan.evening.CardNeed;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.lesson.Block;
import org.drillwright.plan.lesson.DrillLoad;
import org.drillwright.plan.lesson.Lesson;
import org.drillwright.plan.lesson.LessonPlan;
import org.drillwright.plan.lesson.Remark;

/** A timed lesson for a terminal. */
public final class LessonText {

    private static final int TIME = 8;
    private static final int NAME = 46;

    private LessonText() {}

    public static String of(ClassPlan plan, List<CardNeed> cards) {
        LessonPlan lesson = plan.lesson();
        Page page = new Page();
        page.line(ClassHead.of(plan) + ".");
        page.line(sentence(lesson));
        plan.remarks().forEach(remark -> page.wrapped("", remark.sentence()));
        page.gap();
        lesson.blocks().forEach(block -> page.line(row(block, plan)));
        page.list(
                "Cards",
                cards.stream()
                        .map(need -> plan.title(need.drill()) + ": " + need.sentence())
                        .toList());
        page.list("Moved", Remark.sentences(lesson.moved()));
        page.list("To know", Remark.sentences(lesson.advice()));
        return page.toString();
    }

    /** Whether it fits, and the share of practice. */
    public static String sentence(LessonPlan lesson) {
        String fits = lesson.fits()
                ? Clock.of(lesson.spare()) + " to spare"
                : Clock.of(lesson.spare().negated()) + " too long";
        return Clock.of(lesson.needed()) + " of " + Clock.of(lesson.length()) + " minutes, " + fits + ". Practice: "
                + Math.round(100 * lesson.practiceShare()) + " % of the class.";
    }

    private static String row(Block block, ClassPlan plan) {
        return "  " + Page.padded(Clock.of(block.start()), TIME) + Page.padded(name(block, plan), NAME)
                + Page.padded(Clock.of(block.length()), TIME) + work(block, plan);
    }

    /** A block's name as it is shown. */
    private static String name(Block block, ClassPlan plan) {
        return switch (block.kind()) {
            case OPENING -> "Opening salute";
            case WARM_UP -> block.name().equals(Lesson.PLAIN_WARM_UP) ? "Warm-up" : block.name();
            case DRILL -> plan.title(block.name());
            case BEFORE, BETWEEN, SPARE, AFTER -> block.name();
            case CLOSING -> "Closing and salute";
        };
    }

    /** Rounds and repetitions of a drill; why a block is there that only fills the time left. */
    private static String work(Block block, ClassPlan plan) {
        Optional<DrillLoad> load = block.kind() == Block.Kind.DRILL
                ? plan.lesson().drills().stream()
                        .filter(one -> one.drill().equals(block.name()))
                        .findFirst()
                : Optional.empty();
        return load.map(LessonText::work).orElse(block.kind() == Block.Kind.SPARE ? "fills the time left" : "");
    }

    private static String work(DrillLoad load) {
        String times = load.repetitions() + (load.repetitions() == 1 ? " time" : " times");
        String each = load.roles() > 1 ? times + " in each role" : times;
        return load.rounds() > 1 ? Page.counted(load.rounds(), "partner") + ", " + each : each;
    }
}
