package org.drillwright.plan.roster;

import java.time.Duration;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * A drill that an instructor wants in a class.
 *
 * @param drill its id
 * @param value how much it is wanted, 1 or more; weighed where not all fit
 * @param must never left out
 * @param repetitions of each role with each partner, if not the drill's own
 * @param rounds partners on this drill, if stated
 * @param explain how long showing it takes, if not the usual
 */
public record Wanted(
        String drill,
        int value,
        boolean must,
        OptionalInt repetitions,
        OptionalInt rounds,
        Optional<Duration> explain) {

    public static Wanted drill(String id) {
        return new Wanted(id, 1, false, OptionalInt.empty(), OptionalInt.empty(), Optional.empty());
    }
}
