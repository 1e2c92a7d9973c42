package org.drillwright.plan.course;

import java.util.Arrays;
import java.util.List;

/**
 * What a plan costs, goal by goal; the first difference decides.
 *
 * @param costs in the order of {@link Goal}, 0 or more; those at the end may be left out, then they count as 0
 */
public record Row(List<Long> costs) implements Comparable<Row> {

    public Row {
        costs = List.copyOf(costs);
    }

    private static int at(Goal goal) {
        return Arrays.asList(Goal.values()).indexOf(goal);
    }

    public long of(Goal goal) {
        return at(goal) < costs.size() ? costs.get(at(goal)) : 0;
    }

    /** As far as a goal, that one with it. */
    public Row upTo(Goal goal) {
        return new Row(costs.subList(0, Math.min(costs.size(), at(goal) + 1)));
    }

    @Override
    public int compareTo(Row other) {
        for (Goal goal : Goal.values()) {
            int first = Long.compare(of(goal), other.of(goal));
            if (first != 0) {
                return first;
            }
        }
        return 0;
    }
}
