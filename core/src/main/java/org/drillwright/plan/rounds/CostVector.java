package org.drillwright.plan.rounds;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a table costs, aim by aim; the first aim that differs decides which of two is less.
 *
 * @param costs one for each {@link Objective}, in their order
 */
public record CostVector(List<Long> costs) implements Comparable<CostVector> {

    public CostVector {
        costs = List.copyOf(costs);
    }

    public static CostVector of(long... costs) {
        return new CostVector(Arrays.stream(costs).boxed().toList());
    }

    public long of(Objective aim) {
        return costs.get(aim.rank());
    }

    /** The most important aim in which the two differ. */
    public Optional<Objective> firstDifference(CostVector other) {
        return Arrays.stream(Objective.values())
                .filter(aim -> of(aim) != other.of(aim))
                .findFirst();
    }

    @Override
    public int compareTo(CostVector other) {
        return firstDifference(other)
                .map(aim -> Long.compare(of(aim), other.of(aim)))
                .orElse(0);
    }
}
