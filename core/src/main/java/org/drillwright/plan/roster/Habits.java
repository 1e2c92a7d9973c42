package org.drillwright.plan.roster;

import java.util.Optional;

/**
 * What holds for all classes of a school unless a class says otherwise.
 *
 * @param hall the hall that the school usually has, if stated
 * @param initials whether printed sheets show initials instead of names
 */
public record Habits(Timing timing, Optional<Hall> hall, boolean initials) {

    public static final Habits USUAL = new Habits(Timing.USUAL, Optional.empty(), false);
}
