package org.drillwright.plan.rounds;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a table costs, aim by aim; the first aim that differs decides which of two is less.
 *
 * @param costs one for each {@link Aim}, in their order
 */
public record Tally(List<Long> costs) implements Comparable<Tally> {

    public Tally {
        costs = List.copyOf(costs);
    }

    public static Tally of(long... costs) {
        return new Tally(Arrays.stream(costs).boxed().toList());
    }

    public long of(Aim aim) {
        return costs.get(aim.rank());
    }

    /** The most important aim in which the two differ. */
    public Optional<Aim> firstDifference(Tally other) {
        return Arrays.stream(Aim.values())
                .filter(aim -> of(aim) != other.of(aim))
                .findFirst();
    }

    @Override
    public int compareTo(Tally other) {
        return firstDifference(other)
                .map(aim -> Long.compare(of(aim), other.of(aim)))
                .orElse(0);
    }
}
