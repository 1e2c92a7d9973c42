package org.drillwright.plan.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.drillwright.wording.Message;

/** Says of each cell of a plan why it is there: found again from the plan, whatever way it was found by. */
public final class Reasons {

    private final Course course;
    private final CoursePlan plan;
    private final Deadlines latest;
    private final CourseState state;

    private Reasons(CoursePlan plan) {
        this.course = plan.course();
        this.plan = plan;
        this.latest = Deadlines.of(course);
        this.state = new CourseState(course);
    }

    /** By class, then by the drill's number. */
    public static List<Map<Integer, Reason>> of(CoursePlan plan) {
        return new Reasons(plan).all();
    }

    /** Why drills are new in no class: what hinders each in the last one, by the drill's number. */
    public static Map<Integer, Message> left(CoursePlan plan) {
        Reasons reasons = new Reasons(plan);
        var unused = reasons.all();
        Map<Integer, Message> left = new TreeMap<>();
        for (int drill = 0; drill < plan.course().drills().size(); drill++) {
            if (!reasons.state.isIntroduced(drill)) {
                left.put(drill, reasons.hindrance(drill));
            }
        }
        return left;
    }

    private Message hindrance(int drill) {
        Optional<Hindrance> hindrance = state.hindrance(drill, course.meetings().size() - 1);
        if (hindrance.isEmpty()) {
            return said("left.no.room");
        }
        return switch (hindrance.get().kind()) {
            case NEEDS_FIRST ->
                said("left.needs.first", course.drill(hindrance.get().drill()).id());
            case FEW_EXPECTED -> said("left.few.expected");
            case FEW_READY -> said("left.few.ready");
        };
    }

    private List<Map<Integer, Reason>> all() {
        List<Map<Integer, Reason>> all = new ArrayList<>();
        for (int at = 0; at < plan.cells().size(); at++) {
            Map<Integer, Reason> reasons = new HashMap<>();
            for (int drill : plan.cells().get(at).asNew()) {
                LocalDate due = Climb.from(course.day(at)).due().orElseThrow();
                reasons.put(drill, new Reason(asNew(drill, at), 0, Optional.of(due)));
            }
            for (int drill : plan.cells().get(at).again()) {
                reasons.put(drill, again(drill, at));
            }
            state.work(at, plan.cells().get(at));
            all.add(reasons);
        }
        return all;
    }

    private Message asNew(int drill, int at) {
        Asked asked = course.drill(drill);
        if (latest.of(drill) != Deadlines.NEVER) {
            return Message.clauses(List.of(forTheExam(drill), slack(latest.of(drill) - at)));
        }
        return asked.value() > 1 ? said("wanted.early", asked.value()) : said("next.in.order");
    }

    private Message forTheExam(int drill) {
        int by = latest.of(drill);
        int own = course.drill(drill).workings();
        if (own > 0 && by == course.beforeExam() - own) {
            return by >= 0 ? counted("exam.by", own, Message.day(course.day(by))) : counted("exam.next", own);
        }
        int behind = IntStream.range(0, course.drills().size())
                .filter(other -> course.drill(other).needs().contains(drill) && latest.of(other) == by + 1)
                .findFirst()
                .orElse(drill);
        String other = course.drill(behind).id();
        return by >= 0 ? said("behind.by", other, Message.day(course.day(by))) : said("behind.next", other);
    }

    private static Message slack(int classes) {
        if (classes < 0) {
            return counted("slack.late", -classes);
        }
        return classes == 0 ? said("slack.none") : counted("slack", classes);
    }

    private Reason again(int drill, int at) {
        LocalDate day = course.day(at);
        Optional<Climb> climb = state.climb(drill);
        boolean counts = climb.filter(so -> so.counts(day)).isPresent();
        List<Message> because = new ArrayList<>();
        if (at == 0 && course.pinned().contains(drill)) {
            because.add(said("pinned"));
        }
        exam(drill, day).ifPresent(because::add);
        climb.filter(so -> counts).map(so -> review(so, day)).ifPresent(because::add);
        fundamental(drill, climb, at).ifPresent(because::add);
        if (because.isEmpty()) {
            because.add(practice(drill, at, climb));
        }
        Climb after = climb.map(so -> so.worked(day)).orElseGet(() -> Climb.from(day));
        return new Reason(Message.clauses(because), counts ? after.steps() : 0, after.due());
    }

    private Optional<Message> exam(int drill, LocalDate day) {
        int left = state.shortForExam(drill);
        int all = course.drill(drill).workings();
        return left > 0 && course.isBeforeExam(day)
                ? Optional.of(said("working", all - left + 1, all))
                : Optional.empty();
    }

    private static Message review(Climb climb, LocalDate day) {
        Rung rung = climb.next().orElseThrow();
        int number = climb.steps() + 1;
        int late = climb.late(day);
        if (late > 0) {
            return counted("review.late", late, number);
        }
        Message due = Message.day(climb.counted().plusWeeks(rung.latest()));
        return climb.isWished(day) ? said("review.due", number, due) : said("review.early", number, due);
    }

    private Optional<Message> fundamental(int drill, Optional<Climb> climb, int at) {
        OptionalInt every = course.drill(drill).every();
        boolean due = every.isPresent()
                && Weeks.between(climb.map(Climb::last).orElse(course.day(0)), course.next(at)) > every.getAsInt();
        return due ? Optional.of(counted("fundamental", every.getAsInt())) : Optional.empty();
    }

    private Message practice(int drill, int at, Optional<Climb> climb) {
        long lacking = Math.round(state.shortOf(drill, at));
        if (climb.isEmpty()) {
            return said("known");
        }
        return lacking > 0 ? said("practice.lacking", lacking, Asked.ENOUGH) : said("practice");
    }

    private static Message said(String key, Object... values) {
        return Message.of(Reasons.class, key, values);
    }

    private static Message counted(String key, int count, Object... more) {
        return Message.counted(Reasons.class, key, count, more);
    }
}
