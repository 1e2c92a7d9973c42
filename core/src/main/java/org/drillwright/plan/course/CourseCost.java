package org.drillwright.plan.course;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Counts what a plan costs, from what it says alone. */
final class CourseCost {

    /** A changed cell of the class that comes next, of the one behind it, and of a later one. */
    private static final int[] CHANGE = {8, 4, 1};

    /** People are counted in thousandths. */
    private static final int PEOPLE = 1_000;

    private final Course course;
    private final List<Cells> plan;

    private CourseCost(Course course, List<Cells> plan) {
        this.course = course;
        this.plan = plan;
    }

    static Row of(Course course, List<Cells> plan) {
        CourseCost cost = new CourseCost(course, plan);
        long exam = 0;
        long over = 0;
        long late = 0;
        long early = 0;
        for (int drill = 0; drill < course.drills().size(); drill++) {
            List<LocalDate> days = course.days(drill, plan);
            exam += cost.missing(drill, days);
            over += cost.over(drill, days);
            late += cost.late(days);
            early += cost.early(drill);
        }
        return new Row(List.of(exam, over, late, early, cost.changed(), cost.missed()));
    }

    private long missing(int drill, List<LocalDate> days) {
        long worked = days.stream().filter(course::isBeforeExam).count();
        return Math.max(0, course.drill(drill).workings() - worked);
    }

    /** Of what was over before the classes to come nothing can be mended. */
    private long over(int drill, List<LocalDate> days) {
        Asked asked = course.drill(drill);
        if (asked.every().isEmpty() || (days.isEmpty() && !asked.known())) {
            return 0;
        }
        LocalDate first = course.day(0);
        LocalDate last = asked.past().isEmpty()
                ? (asked.known() ? first : days.get(0))
                : asked.past().get(asked.past().size() - 1);
        long over = 0;
        for (LocalDate day : days) {
            if (day.isAfter(last)) {
                over += Math.max(0, Weeks.between(last, day) - asked.every().getAsInt());
                last = day;
            }
        }
        return over
                + Math.max(
                        0, Weeks.between(last, course.after()) - asked.every().getAsInt());
    }

    private long late(List<LocalDate> days) {
        LocalDate first = course.day(0);
        Optional<Climb> climb = Optional.empty();
        long late = 0;
        for (LocalDate day : days) {
            if (climb.isPresent() && climb.get().counts(day) && !day.isBefore(first)) {
                late += climb.get().late(day);
            }
            climb = Optional.of(climb.map(so -> so.worked(day)).orElseGet(() -> Climb.from(day)));
        }
        return late + climb.map(so -> so.late(course.after())).orElse(0);
    }

    private long early(int drill) {
        Asked asked = course.drill(drill);
        if (asked.isIntroduced()) {
            return 0;
        }
        for (int at = 0; at < plan.size(); at++) {
            if (plan.get(at).asNew().contains(drill)) {
                return (long) asked.value() * course.meetings().get(at).number();
            }
        }
        return (long) asked.value() * course.classes();
    }

    private long changed() {
        long changed = 0;
        for (int at = 0; at < course.published().size(); at++) {
            Cells now = plan.get(at);
            Cells before = course.published().get(at);
            long cells = differing(now.asNew(), before.asNew()) + differing(now.again(), before.again());
            changed += cells * CHANGE[Math.min(at, CHANGE.length - 1)];
        }
        return changed;
    }

    static long differing(Set<Integer> now, Set<Integer> before) {
        return now.stream().filter(drill -> !before.contains(drill)).count()
                + before.stream().filter(drill -> !now.contains(drill)).count();
    }

    private long missed() {
        double missed = 0;
        for (int at = 0; at < plan.size(); at++) {
            List<Double> chances = course.meetings().get(at).chances();
            for (int drill : plan.get(at).asNew()) {
                List<Integer> done = course.drill(drill).done();
                for (int person = 0; person < chances.size(); person++) {
                    missed += done.get(person) == 0 ? 1 - chances.get(person) : 0;
                }
            }
        }
        return Math.round(missed * PEOPLE);
    }
}
