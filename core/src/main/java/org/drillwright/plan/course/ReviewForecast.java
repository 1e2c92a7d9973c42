package org.drillwright.plan.course;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What becomes of the reviews if nothing else is new any more: in each class those first that are due first. */
final class ReviewForecast {

    /** Classes that are looked ahead: more than the widest gap between two reviews. */
    private static final int FAR = 16;

    private final Course course;
    private final int from;
    private final List<Climb> climbs = new ArrayList<>();
    private long late;

    /**
     * Of a class that is half filled.
     *
     * @param again what comes again in it
     * @param asNew what is new in it
     */
    ReviewForecast(Course course, CourseState state, int at, Set<Integer> again, Set<Integer> asNew) {
        this.course = course;
        this.from = at + 1;
        LocalDate day = course.day(at);
        for (int drill = 0; drill < course.drills().size(); drill++) {
            Optional<Climb> before = state.climb(drill);
            boolean worked = again.contains(drill) || asNew.contains(drill);
            Optional<Climb> after = worked
                    ? Optional.of(before.map(climb -> climb.worked(day)).orElseGet(() -> Climb.from(day)))
                    : before;
            after.ifPresent(climbs::add);
        }
        int minutes = course.meetings().get(at).minutes() - course.minutes(new Cells(asNew, again));
        work(day, course.next(at), minutes);
    }

    /** In weeks, over all drills. */
    long late() {
        int to = Math.min(course.meetings().size(), from + FAR);
        for (int at = from; at < to; at++) {
            work(course.day(at), course.next(at), course.meetings().get(at).minutes());
        }
        return late
                + climbs.stream()
                        .mapToLong(climb -> climb.late(course.next(to - 1)))
                        .sum();
    }

    private void work(LocalDate day, LocalDate next, int minutes) {
        List<Integer> wanted = new ArrayList<>();
        for (int one = 0; one < climbs.size(); one++) {
            Climb climb = climbs.get(one);
            if (climb.counts(day) && (climb.isWished(day) || climb.late(next) > 0)) {
                wanted.add(one);
            }
        }
        wanted.sort(Comparator.comparingInt(one -> slack(climbs.get(one), day)));
        for (int one : wanted.subList(0, Math.min(wanted.size(), Math.max(0, minutes) / course.againMinutes()))) {
            late += climbs.get(one).late(day);
            climbs.set(one, climbs.get(one).worked(day));
        }
    }

    private static int slack(Climb climb, LocalDate day) {
        return climb.next().map(rung -> rung.latest() - climb.gap(day)).orElse(Integer.MAX_VALUE);
    }
}
