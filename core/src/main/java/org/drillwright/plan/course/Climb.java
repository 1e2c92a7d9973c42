package org.drillwright.plan.course;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * How far the reviews of a drill have come.
 *
 * @param steps reviews that counted
 * @param counted the working that counted last
 * @param last the last working, counted or not
 */
record Climb(int steps, LocalDate counted, LocalDate last) {

    /** Of days on which a drill was worked, in order; nothing if there are none. */
    static Optional<Climb> of(List<LocalDate> days) {
        Optional<Climb> climb = Optional.empty();
        for (LocalDate day : days) {
            climb = Optional.of(climb.map(so -> so.worked(day)).orElseGet(() -> from(day)));
        }
        return climb;
    }

    static Climb from(LocalDate day) {
        return new Climb(0, day, day);
    }

    /** The review that is to come; nothing once all are done. */
    Optional<Rung> next() {
        return steps < Rung.LADDER.size() ? Optional.of(Rung.LADDER.get(steps)) : Optional.empty();
    }

    boolean counts(LocalDate day) {
        return next().filter(rung -> gap(day) >= rung.earliest()).isPresent();
    }

    Climb worked(LocalDate day) {
        return counts(day) ? new Climb(steps + 1, day, day) : new Climb(steps, counted, day);
    }

    int gap(LocalDate day) {
        return Weeks.between(counted, day);
    }

    /** By how many weeks the review to come would be late on a day. */
    int late(LocalDate day) {
        return next().map(rung -> Math.max(0, gap(day) - rung.latest())).orElse(0);
    }

    boolean isWished(LocalDate day) {
        return next().filter(rung -> gap(day) >= rung.wished()).isPresent();
    }

    /** The last day on which the review to come is not late, as whole weeks from the working that counted. */
    Optional<LocalDate> due() {
        return next().map(rung -> counted.plusWeeks(rung.latest()));
    }
}
