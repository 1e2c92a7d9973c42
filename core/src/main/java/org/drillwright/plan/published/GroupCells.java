package org.drillwright.plan.published;

import java.util.List;
import java.util.stream.Stream;

/**
 * What one group does in a class.
 *
 * @param asNew ids of drills that are new
 * @param again ids of drills that come again
 */
public record GroupCells(String group, List<String> asNew, List<String> again) {

    public GroupCells {
        asNew = List.copyOf(asNew);
        again = List.copyOf(again);
    }

    /** All that is worked. */
    public List<String> all() {
        return Stream.concat(asNew.stream(), again.stream()).toList();
    }
}
