package org.drillwright.report.plan;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.plan.evening.CardNeed;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.lesson.DrillLoad;
import org.drillwright.plan.lesson.Lesson;
import org.drillwright.plan.lesson.LessonPart;
import org.drillwright.plan.lesson.LessonPlan;
import org.drillwright.plan.lesson.Remark;
import org.drillwright.wording.Message;

/** A timed lesson for a terminal. */
public final class LessonText {

    private static final int TIME = 8;
    private static final int NAME = 46;

    private LessonText() {}

    public static String of(ClassPlan plan, List<CardNeed> cards, Locale language) {
        LessonPlan lesson = plan.lesson();
        TerminalPage page = new TerminalPage(language);
        page.line(ClassHead.of(plan).sentence());
        page.line(sentence(lesson));
        plan.remarks().forEach(remark -> page.wrapped("", remark.sentence()));
        page.gap();
        lesson.blocks().forEach(block -> page.line(row(block, plan, page)));
        page.list(
                said("cards"),
                cards.stream()
                        .map(need -> said("titled", plan.title(need.drill()), need.sentence()))
                        .toList());
        page.list(said("moved"), Remark.sentences(lesson.moved()));
        page.list(said("to.know"), Remark.sentences(lesson.advice()));
        return page.toString();
    }

    /** Whether it fits, and the share of practice. */
    public static Message sentence(LessonPlan lesson) {
        return said(
                lesson.fits() ? "lesson.fits" : "lesson.over",
                Clock.of(lesson.needed()),
                Clock.of(lesson.length()),
                Clock.of(lesson.spare().abs()),
                Math.round(100 * lesson.practiceShare()));
    }

    private static String row(LessonPart block, ClassPlan plan, TerminalPage page) {
        return "  " + TerminalPage.padded(Clock.of(block.start()), TIME)
                + TerminalPage.padded(page.said(name(block, plan)), NAME)
                + TerminalPage.padded(Clock.of(block.length()), TIME) + page.said(work(block, plan));
    }

    /** A block's name as it is shown. */
    private static Message name(LessonPart block, ClassPlan plan) {
        return switch (block.kind()) {
            case OPENING -> said("opening");
            case WARM_UP -> block.name().equals(Lesson.PLAIN_WARM_UP) ? said("warm.up") : Message.plain(block.name());
            case DRILL -> Message.plain(plan.title(block.name()));
            case BEFORE, BETWEEN, SPARE, AFTER -> Message.plain(block.name());
            case CLOSING -> said("closing");
        };
    }

    /** Rounds and repetitions of a drill; why a block is there that only fills the time left. */
    private static Message work(LessonPart block, ClassPlan plan) {
        Optional<DrillLoad> load = block.kind() == LessonPart.Kind.DRILL
                ? plan.lesson().drills().stream()
                        .filter(one -> one.drill().equals(block.name()))
                        .findFirst()
                : Optional.empty();
        return load.map(LessonText::work)
                .orElse(block.kind() == LessonPart.Kind.SPARE ? said("fills") : Message.none());
    }

    private static Message work(DrillLoad load) {
        Message times = Message.counted(LessonText.class, "times", load.repetitions());
        Message each = load.roles() > 1 ? said("each.role", times) : times;
        return load.rounds() > 1 ? Message.counted(LessonText.class, "partners", load.rounds(), each) : each;
    }

    private static Message said(String key, Object... values) {
        return Message.of(LessonText.class, key, values);
    }
}
