package org.drillwright.plan.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What no plan can do without.
 *
 * @param row below which no plan is, as far as {@link Goal#EARLY}
 * @param crowd why workings for the exam must be missing, if too many introductions are due too early
 */
public record CourseBound(Row row, Optional<Crowd> crowd) {

    /** How many workings for the exam no plan can do without missing. */
    public long missing() {
        return row.of(Goal.EXAM);
    }

    /**
     * More introductions than there is room for.
     *
     * @param due drills that have to be new by a class
     * @param places introductions that fit up to that class
     * @param by its day; absent if it would have been before the first class to come
     */
    public record Crowd(int due, int places, Optional<LocalDate> by, int missing) {}

    /** Each part is a bound by itself, so the row of them is nowhere above that of a plan. */
    static CourseBound of(Course course) {
        Optional<Crowd> crowd = crowd(course);
        int[] depths = depths(course);
        long exam = Math.max(crowd.map(Crowd::missing).orElse(0), late(course, depths));
        long over = 0;
        long late = 0;
        LocalDate first = course.day(0);
        for (Asked asked : course.drills()) {
            if (!asked.past().isEmpty()) {
                int gap = Weeks.between(asked.past().get(asked.past().size() - 1), first);
                over += asked.every().isPresent()
                        ? Math.max(0, gap - asked.every().getAsInt())
                        : 0;
                late += Climb.of(asked.past()).map(climb -> climb.late(first)).orElse(0);
            }
        }
        return new CourseBound(new Row(List.of(exam, over, late, early(course, depths))), crowd);
    }

    /**
     * For each latest class: if more is due by it than has room up to it, the last of these is new so many classes late, and
     * with it, or behind it, a drill of the exam, which then lacks as many workings.
     */
    private static Optional<Crowd> crowd(Course course) {
        Deadlines latest = Deadlines.of(course);
        Optional<Crowd> worst = Optional.empty();
        int most = course.drills().stream().mapToInt(Asked::workings).max().orElse(0);
        for (int drill = 0; drill < course.drills().size(); drill++) {
            int by = latest.of(drill);
            if (by == Deadlines.NEVER) {
                continue;
            }
            int due = (int) IntStream.range(0, course.drills().size())
                    .filter(other -> latest.of(other) <= by)
                    .count();
            worst = worse(course, worst, by, due, most);
        }
        return worst;
    }

    private static Optional<Crowd> worse(Course course, Optional<Crowd> worst, int by, int due, int most) {
        int inTime = 0;
        int all = 0;
        int lands = 0;
        for (int at = 0; at < course.meetings().size() && all < due; at++) {
            all += course.places(at);
            inTime += at <= by ? course.places(at) : 0;
            lands = at;
        }
        lands = all < due ? course.meetings().size() : lands;
        int missing = Math.min(most, lands - by);
        boolean more = missing > worst.map(Crowd::missing).orElse(0);
        Optional<LocalDate> day = by < 0 ? Optional.empty() : Optional.of(course.day(by));
        return more ? Optional.of(new Crowd(due, inTime, day, missing)) : worst;
    }

    /** How many drills must be new one class after the other before each, the known ones aside. */
    private static int[] depths(Course course) {
        int drills = course.drills().size();
        int[] depths = new int[drills];
        for (int pass = 0; pass < drills; pass++) {
            for (int drill = 0; drill < drills; drill++) {
                for (int need : course.drill(drill).needs()) {
                    if (!course.drill(need).isIntroduced()) {
                        depths[drill] = Math.min(drills, Math.max(depths[drill], depths[need] + 1));
                    }
                }
            }
        }
        return depths;
    }

    /** Even if every class before the exam worked all that can have been new by then. */
    private static long late(Course course, int[] depths) {
        long missing = 0;
        for (int drill = 0; drill < course.drills().size(); drill++) {
            Asked asked = course.drill(drill);
            long worked = asked.past().stream().filter(course::isBeforeExam).count();
            int left = Math.max(0, course.beforeExam() - (asked.isIntroduced() ? 0 : depths[drill]));
            missing += Math.max(0, asked.workings() - worked - left);
        }
        return missing;
    }

    /** The most valuable first, each no earlier than what it needs lets it, as if reviews took no time. */
    private static long early(Course course, int[] depths) {
        List<Integer> left = new ArrayList<>();
        for (int drill = 0; drill < course.drills().size(); drill++) {
            if (!course.drill(drill).isIntroduced()) {
                left.add(drill);
            }
        }
        left.sort(Comparator.comparingInt(drill -> -course.drill(drill).value()));
        long early = 0;
        for (int at = 0; at < course.meetings().size(); at++) {
            int meeting = at;
            List<Integer> taken = left.stream()
                    .filter(drill -> depths[drill] <= meeting)
                    .limit(course.places(at))
                    .toList();
            for (int drill : taken) {
                early += (long) course.drill(drill).value()
                        * course.meetings().get(at).number();
            }
            left.removeAll(taken);
        }
        for (int drill : left) {
            early += (long) course.drill(drill).value() * course.classes();
        }
        return early;
    }
}
