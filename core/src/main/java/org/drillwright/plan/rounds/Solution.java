package org.drillwright.plan.rounds;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A table and what is known of it.
 *
 * @param extras for each round, who helps and how many are left
 * @param cost what the table costs
 * @param bound what no table can be below
 */
public record Solution(Problem problem, Table table, Method method, List<Extras> extras, Tally cost, Tally bound) {

    public Solution {
        extras = List.copyOf(extras);
        if (cost.compareTo(bound) < 0) {
            throw new IllegalStateException("a table of " + cost + " below a bound of " + bound);
        }
    }

    /** The least cost if two worked together in a round and the other rounds stayed; empty if they can't. */
    public Optional<Tally> together(int round, int one, int other) {
        Choices all = choices(round);
        return Stream.of(all.forcing(one, other), all.joining(one, other), all.joining(other, one))
                .flatMap(choices -> changed(round, choices).stream())
                .min(Comparator.naturalOrder());
    }

    /** The least cost if two did not work together in a round and the other rounds stayed; empty if they must. */
    public Optional<Tally> parted(int round, int one, int other) {
        return changed(round, choices(round).parting(one, other));
    }

    private Choices choices(int round) {
        Reckoning others = Reckoning.without(problem, table, round, problem.rounds());
        return Choices.of(problem, round, extras.get(round), others::cost);
    }

    private Optional<Tally> changed(int round, Choices choices) {
        return choices.least(0, Optional.empty()).map(row -> Reckoning.tally(problem, table.with(round, row)));
    }
}
