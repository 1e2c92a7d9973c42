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
public record Solution(
        Problem problem, PartnerTable table, Method method, List<Extras> extras, CostVector cost, CostVector bound) {

    public Solution {
        extras = List.copyOf(extras);
        if (cost.compareTo(bound) < 0) {
            throw new IllegalStateException("a table of " + cost + " below a bound of " + bound);
        }
    }

    /** The least cost if two worked together in a round and the other rounds stayed; empty if they can't. */
    public Optional<CostVector> together(int round, int one, int other) {
        RoundMatching all = choices(round);
        return Stream.of(all.forcing(one, other), all.joining(one, other), all.joining(other, one))
                .flatMap(choices -> changed(round, choices).stream())
                .min(Comparator.naturalOrder());
    }

    /** The least cost if two did not work together in a round and the other rounds stayed; empty if they must. */
    public Optional<CostVector> parted(int round, int one, int other) {
        return changed(round, choices(round).parting(one, other));
    }

    private RoundMatching choices(int round) {
        TableCost others = TableCost.without(problem, table, round, problem.rounds());
        return RoundMatching.of(problem, round, extras.get(round), others::cost);
    }

    private Optional<CostVector> changed(int round, RoundMatching choices) {
        return choices.least(0, Optional.empty()).map(row -> TableCost.tally(problem, table.with(round, row)));
    }
}
