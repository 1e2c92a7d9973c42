package org.drillwright.model;

import java.util.List;
import java.util.Optional;

/**
 * A named set of drills: those listed, or all that are of its level, its weapon and its tag.
 *
 * @param level the level that its drills are of, if it is named so
 * @param weapon the weapon that its drills are for, if it is named so
 * @param tag the tag that its drills have, if it is named so
 * @param drills ids in teaching order; empty if it is named by level, weapon or tag
 */
public record DrillSet(
        String name, Optional<String> level, Optional<Weapon> weapon, Optional<String> tag, List<String> drills) {

    public DrillSet {
        drills = List.copyOf(drills);
    }

    /** A set by level, or of those listed. */
    public DrillSet(String name, Optional<String> level, List<String> drills) {
        this(name, level, Optional.empty(), Optional.empty(), drills);
    }

    /** Whether its drills are listed one by one. */
    public boolean isListed() {
        return !drills.isEmpty();
    }

    public boolean holds(Drill drill) {
        if (isListed()) {
            return drills.contains(drill.id());
        }
        boolean named = level.isPresent() || weapon.isPresent() || tag.isPresent();
        return named
                && level.filter(wanted -> !wanted.equals(drill.level())).isEmpty()
                && weapon.filter(wanted -> wanted != drill.weapon()).isEmpty()
                && tag.filter(wanted -> !drill.tags().contains(wanted)).isEmpty();
    }
}
