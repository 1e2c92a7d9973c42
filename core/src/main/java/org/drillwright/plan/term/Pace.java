package org.drillwright.plan.term;

import java.time.Duration;

/**
 * How much is taught in a class.
 *
 * @param newAClass drills that may be new in one class
 * @param asNew time that a drill takes when it is new
 * @param again time that it takes when it comes again
 */
public record Pace(int newAClass, Duration asNew, Duration again) {

    /** Common practice, no source. */
    public static final Pace USUAL = new Pace(2, Duration.ofMinutes(12), Duration.ofMinutes(6));
}
