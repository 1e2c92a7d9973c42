package org.drillwright.plan.rounds;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Makes a table round by round, then finds each round anew with the others fixed as long as that helps. Exact for one
 * round; for several it comes near, and a bound says how near.
 */
final class Stepwise {

    private final Problem problem;
    private final List<Extras> extras;
    private final CostVector bound;
    private final Effort effort;

    Stepwise(Problem problem, List<Extras> extras, CostVector bound) {
        this.problem = problem;
        this.extras = extras;
        this.bound = bound;
        this.effort = Effort.of(problem);
    }

    /**
     * The best of several beginnings; stops at once when the bound is reached.
     *
     * @param begun rounds of the first of them
     */
    PartnerTable best(List<int[]> begun) {
        PartnerTable best = continued(begun);
        for (int seed = 1; effort.allowsBeginningAfter(seed) && tally(best).compareTo(bound) > 0; seed++) {
            Optional<SplittableRandom> chance =
                    seed == 1 && !begun.isEmpty() ? Optional.empty() : Optional.of(new SplittableRandom(seed));
            PartnerTable other = improved(built(List.of(), chance));
            best = Collections.min(List.of(best, other), Comparator.comparing(this::tally));
        }
        return best;
    }

    private CostVector tally(PartnerTable table) {
        return TableCost.tally(problem, table);
    }

    /** Goes on from rounds that are begun; all rounds are found anew if that helps. */
    PartnerTable continued(List<int[]> begun) {
        return improved(built(begun, Optional.empty()));
    }

    private PartnerTable built(List<int[]> begun, Optional<SplittableRandom> chance) {
        PartnerTable table = PartnerTable.empty(problem);
        for (int round = 0; round < begun.size(); round++) {
            table = table.with(round, begun.get(round));
        }
        for (int round = begun.size(); round < problem.rounds(); round++) {
            TableCost before = TableCost.without(problem, table, -1, round);
            table = table.with(round, row(round, before, bound.of(Objective.WIDEST), chance));
        }
        return table;
    }

    private int[] row(int round, TableCost others, long floor, Optional<SplittableRandom> chance) {
        return RoundMatching.of(problem, round, extras.get(round), others::cost)
                .least(floor, chance)
                .orElseThrow(() -> new IllegalStateException("round " + round + " has no matching"));
    }

    /** Finds each round anew, the others fixed; keeps what isn't worse; stops after passes that helped nothing. */
    PartnerTable improved(PartnerTable table) {
        SplittableRandom chance = new SplittableRandom(problem.students());
        PartnerTable best = table;
        CostVector least = tally(best);
        for (int pass = 0, stalled = 0; effort.allowsPassAfter(pass, stalled) && least.compareTo(bound) > 0; pass++) {
            CostVector before = least;
            for (int round = 0; round < problem.rounds(); round++) {
                PartnerTable tried = anew(best, round, pass == 0 ? Optional.empty() : Optional.of(chance));
                CostVector tally = tally(tried);
                if (tally.compareTo(least) <= 0) {
                    best = tried;
                    least = tally;
                }
            }
            stalled = least.equals(before) ? stalled + 1 : 0;
        }
        return best;
    }

    private PartnerTable anew(PartnerTable table, int round, Optional<SplittableRandom> chance) {
        TableCost others = TableCost.without(problem, table, round, problem.rounds());
        return table.with(round, row(round, others, widestBut(table, round), chance));
    }

    private long widestBut(PartnerTable table, int skipped) {
        long widest = 0;
        for (int round = 0; round < problem.rounds(); round++) {
            for (int student = 0; round != skipped && student < problem.students(); student++) {
                int mate = partner(table.mate(round, student));
                widest = problem.isStudent(mate)
                        ? Math.max(widest, problem.cost(Objective.WIDEST, student, mate))
                        : widest;
            }
        }
        return widest;
    }

    private int partner(int mate) {
        return mate > problem.blank() ? problem.joined(mate) : mate;
    }
}
