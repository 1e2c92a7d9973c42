package org.drillwright.plan.course;

import java.util.Set;
import java.util.TreeSet;

/**
 * What is done in one class, by the drills' numbers.
 *
 * @param asNew drills that are new
 * @param again drills that come again
 */
public record Cells(Set<Integer> asNew, Set<Integer> again) {

    public static final Cells NONE = new Cells(Set.of(), Set.of());

    public Cells {
        asNew = Set.copyOf(asNew);
        again = Set.copyOf(again);
    }

    public boolean works(int drill) {
        return asNew.contains(drill) || again.contains(drill);
    }

    /** All that is worked, in the order of the drills. */
    public Set<Integer> all() {
        Set<Integer> all = new TreeSet<>(asNew);
        all.addAll(again);
        return all;
    }
}
