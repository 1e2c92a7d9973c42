package org.drillwright.plan.lesson;

import java.time.Duration;
import java.util.Collections;
import java.util.List;

/**
 * A timed lesson.
 *
 * @param blocks in order; changeovers lie between them
 * @param drills those chosen, in order, with the rounds and repetitions they were given
 * @param leftOut those that found no room
 * @param length how long the class lasts
 * @param needed how long the blocks last, from the first salute to the last
 * @param moved what changed place, and why
 * @param advice what the instructor should know or could cut
 */
public record LessonPlan(
        List<LessonPart> blocks,
        List<DrillLoad> drills,
        List<DrillLoad> leftOut,
        Duration length,
        Duration needed,
        List<Remark> moved,
        List<Remark> advice) {

    /** The least share of the class that should be practice; an observed average is 0.37, the usual goal 0.5. */
    public static final double LEAST_PRACTICE = 0.4;

    public LessonPlan {
        blocks = List.copyOf(blocks);
        drills = List.copyOf(drills);
        leftOut = List.copyOf(leftOut);
        moved = List.copyOf(moved);
        advice = List.copyOf(advice);
    }

    /** Time left at the end; below 0 if it does not fit. */
    public Duration spare() {
        return length.minus(needed);
    }

    public boolean fits() {
        return !spare().isNegative();
    }

    /** Time in which each one practises; waiting for a lane is none. */
    public Duration practice() {
        return drills.stream().map(DrillLoad::own).reduce(Duration.ZERO, Duration::plus);
    }

    /** What part of the class is practice, from 0 to 1. */
    public double practiceShare() {
        return length.isZero() ? 0 : (double) practice().toSeconds() / length.toSeconds();
    }

    /** The drill of each round of partners, in order. */
    public List<String> drillOfEachRound() {
        return drills.stream()
                .flatMap(load -> Collections.nCopies(load.rounds(), load.drill()).stream())
                .toList();
    }
}
