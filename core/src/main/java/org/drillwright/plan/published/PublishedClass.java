package org.drillwright.plan.published;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * A class as a published plan has it.
 *
 * @param key names it for good
 * @param begins when, if that was stated
 * @param minutes from opening to closing
 */
public record PublishedClass(
        String key, LocalDate date, Optional<LocalTime> begins, int minutes, List<GroupCells> groups) {

    public PublishedClass {
        groups = List.copyOf(groups);
    }

    /** What a group does in it; nothing if the group wasn't there when the plan was published. */
    public Optional<GroupCells> of(String group) {
        return groups.stream().filter(cells -> cells.group().equals(group)).findFirst();
    }
}
