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

/** Says of each cell of a plan why it is there: found again from the plan, whatever way it was found by. */
public final class Reasons {

    private final Course course;
    private final CoursePlan plan;
    private final Latest latest;
    private final CourseState state;

    private Reasons(CoursePlan plan) {
        this.course = plan.course();
        this.plan = plan;
        this.latest = Latest.of(course);
        this.state = new CourseState(course);
    }

    /** By class, then by the drill's number. */
    public static List<Map<Integer, Reason>> of(CoursePlan plan) {
        return new Reasons(plan).all();
    }

    /** Why drills are new in no class: what hinders each in the last one, by the drill's number. */
    public static Map<Integer, String> left(CoursePlan plan) {
        Reasons reasons = new Reasons(plan);
        var unused = reasons.all();
        Map<Integer, String> left = new TreeMap<>();
        for (int drill = 0; drill < plan.course().drills().size(); drill++) {
            if (!reasons.state.isIntroduced(drill)) {
                left.put(drill, reasons.hindrance(drill));
            }
        }
        return left;
    }

    private String hindrance(int drill) {
        Optional<Hindrance> hindrance = state.hindrance(drill, course.meetings().size() - 1);
        if (hindrance.isEmpty()) {
            return "there is no room for it";
        }
        return switch (hindrance.get().kind()) {
            case NEEDS_FIRST ->
                "it needs " + course.drill(hindrance.get().drill()).id() + ", which isn't new either";
            case FEW_EXPECTED -> "fewer than half of those who need it are expected";
            case FEW_READY -> "fewer than two thirds of those expected have met what it needs";
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

    private String asNew(int drill, int at) {
        Asked asked = course.drill(drill);
        if (latest.of(drill) != Latest.NEVER) {
            return forTheExam(drill) + slack(latest.of(drill) - at);
        }
        return asked.value() > 1 ? "wanted early (value " + asked.value() + ")" : "next in the order of the drills";
    }

    private String forTheExam(int drill) {
        int by = latest.of(drill);
        String day = by >= 0 ? "by " + course.day(by) : "before the next class";
        int own = course.drill(drill).workings();
        if (own > 0 && by == course.beforeExam() - own) {
            return "the exam needs it worked in " + counted(own, "class", "classes") + ", so new " + day;
        }
        int behind = IntStream.range(0, course.drills().size())
                .filter(other -> course.drill(other).needs().contains(drill) && latest.of(other) == by + 1)
                .findFirst()
                .orElse(drill);
        return "needed by " + course.drill(behind).id() + ", which the exam depends on, so new " + day;
    }

    private static String slack(int classes) {
        if (classes < 0) {
            return "; " + counted(-classes, "class", "classes") + " late";
        }
        return classes == 0 ? "; none to spare" : "; " + counted(classes, "class", "classes") + " to spare";
    }

    private Reason again(int drill, int at) {
        LocalDate day = course.day(at);
        Optional<Climb> climb = state.climb(drill);
        boolean counts = climb.filter(so -> so.counts(day)).isPresent();
        List<String> because = new ArrayList<>();
        if (at == 0 && course.pinned().contains(drill)) {
            because.add("at least a quarter of those expected lack it, and it is needed next");
        }
        exam(drill, day).ifPresent(because::add);
        climb.filter(so -> counts).map(so -> review(so, day)).ifPresent(because::add);
        fundamental(drill, climb, at).ifPresent(because::add);
        if (because.isEmpty()) {
            because.add(practice(drill, at, climb));
        }
        Climb after = climb.map(so -> so.worked(day)).orElseGet(() -> Climb.from(day));
        return new Reason(String.join("; ", because), counts ? after.steps() : 0, after.due());
    }

    private Optional<String> exam(int drill, LocalDate day) {
        int left = state.shortForExam(drill);
        int all = course.drill(drill).workings();
        return left > 0 && course.isBeforeExam(day)
                ? Optional.of("working " + (all - left + 1) + " of " + all + " for the exam")
                : Optional.empty();
    }

    private static String review(Climb climb, LocalDate day) {
        Rung rung = climb.next().orElseThrow();
        String review = "review " + (climb.steps() + 1) + ", ";
        int late = climb.late(day);
        if (late > 0) {
            return review + counted(late, "week", "weeks") + " late";
        }
        String due = "due by " + climb.counted().plusWeeks(rung.latest());
        return climb.isWished(day) ? review + due : review + "early, as there is time; " + due;
    }

    private Optional<String> fundamental(int drill, Optional<Climb> climb, int at) {
        OptionalInt every = course.drill(drill).every();
        boolean due = every.isPresent()
                && Weeks.between(climb.map(Climb::last).orElse(course.day(0)), course.next(at)) > every.getAsInt();
        return due
                ? Optional.of("a fundamental, at least every " + counted(every.getAsInt(), "week", "weeks"))
                : Optional.empty();
    }

    private String practice(int drill, int at, Optional<Climb> climb) {
        long lacking = Math.round(state.shortOf(drill, at));
        if (climb.isEmpty()) {
            return "known, but not yet on record";
        }
        return lacking > 0
                ? "practice in the time left: about " + lacking + " of those expected have worked it on fewer than "
                        + Asked.ENOUGH + " days"
                : "practice in the time left";
    }

    private static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }
}
