package org.drillwright.plan.roster;

import java.time.Duration;

/**
 * How long things take that no drill states. All defaults are common practice, no source; a school learns its own from
 * the minutes that classes really took.
 *
 * @param opening salute and words at the beginning
 * @param warmUp before the first drill
 * @param closing stretching, words and salute at the end
 * @param changeover between one drill and the next
 * @param swap between the two roles of a drill
 * @param change to the next partner
 * @param reset back to distance after each repetition
 * @param explainNew showing a drill to a class in which somebody is new to it
 * @param explainKnown showing it to a class that knows it
 * @param wholeClass going through a drill together, all at once, where it is new to all; beyond showing it
 */
public record Timing(
        Duration opening,
        Duration warmUp,
        Duration closing,
        Duration changeover,
        Duration swap,
        Duration change,
        Duration reset,
        Duration explainNew,
        Duration explainKnown,
        Duration wholeClass) {

    public static final Timing USUAL = new Timing(
            Duration.ofSeconds(120),
            Duration.ofSeconds(480),
            Duration.ofSeconds(300),
            Duration.ofSeconds(60),
            Duration.ofSeconds(10),
            Duration.ofSeconds(30),
            Duration.ofSeconds(3),
            Duration.ofSeconds(150),
            Duration.ofSeconds(60),
            Duration.ofSeconds(120));

    /** What a class needs apart from its drills. */
    public Duration fixed() {
        return opening.plus(warmUp).plus(closing);
    }
}
