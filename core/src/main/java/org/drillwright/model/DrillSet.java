package org.drillwright.model;

import java.util.List;
import java.util.Optional;

/**
 * A named set of drills: either all of one level, or those listed, in teaching order.
 *
 * @param level the level whose drills belong to it, if it is named so
 * @param drills ids in teaching order; empty if it is named by level
 */
public record DrillSet(String name, Optional<String> level, List<String> drills) {

    public DrillSet {
        drills = List.copyOf(drills);
    }
}
