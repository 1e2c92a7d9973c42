package org.drillwright.register;

import java.time.LocalDate;
import java.util.List;

/**
 * What one run told of one class, between its first line and its last; it counts as a whole or not at all.
 *
 * @param id taken from what was told, and from what came before it
 * @param named the class
 * @param plan the mark of the plan that was recorded
 */
public record Batch(String id, LocalDate date, String named, String plan, List<RecordLine> lines) {

    public Batch {
        lines = List.copyOf(lines);
    }

    /** Whether it tells of a class on a day. */
    boolean isOf(LocalDate day, String name) {
        return date.equals(day) && named.equals(name);
    }
}
