package org.drillwright.plan.roster;

import java.util.List;
import java.util.Optional;

/**
 * What holds for all classes of a school unless a class says otherwise.
 *
 * @param hall the hall that the school usually has, if stated
 * @param initials whether printed sheets show initials instead of names
 * @param blocks parts of a lesson that are the school's own
 */
public record Habits(Timing timing, Optional<Hall> hall, boolean initials, List<OwnBlock> blocks) {

    public static final Habits USUAL = new Habits(Timing.USUAL, Optional.empty(), false, List.of());

    public Habits {
        blocks = List.copyOf(blocks);
    }
}
