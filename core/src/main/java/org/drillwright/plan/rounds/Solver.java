package org.drillwright.plan.rounds;

import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Finds the best table that can be found, for all rounds or beside those that are given. */
public final class Solver {

    private final Problem problem;
    private final List<Extras> extras;

    private Solver(Problem problem, List<Extras> extras) {
        this.problem = problem;
        this.extras = extras;
    }

    public static Solution solve(Problem problem) {
        return new Solver(problem, Extras.ofAll(problem)).free();
    }

    /**
     * Takes rounds that are walked, and finds the others beside them. Whoever stands before a gap joins a pair as far as
     * there may be thirds, and is alone else.
     *
     * @param least for each round, the extras it needs ({@link Extras#ofAll})
     * @param given for each round and student the partner, as in a table; what stands there for open rounds doesn't count
     * @param open rounds to be found
     * @return empty if somebody before a gap may join nobody
     */
    public static Optional<Solution> beside(
            Problem problem, List<Extras> least, int[][] given, BitSet open, Method method) {
        Completed completed = new Completed(problem, least, open);
        return completed
                .table(new PartnerTable(given))
                .map(table -> new Solver(problem, completed.extras(table)).judged(table, method));
    }

    /** Whether everybody before a gap may join a pair, or be alone. */
    public static boolean isSettled(Problem problem, List<Extras> least, int[][] given, BitSet open) {
        return new Completed(problem, least, open)
                .settled(new PartnerTable(given))
                .isPresent();
    }

    private Solution judged(PartnerTable table, Method method) {
        CostVector least = Bound.of(problem, extras);
        CostVector cost = TableCost.tally(problem, table);
        CostVector bound = cost.compareTo(least) <= 0
                ? least
                : Factor.solve(problem, extras, least)
                        .map(outcome -> greater(outcome.bound(), least))
                        .orElse(least);
        return new Solution(problem, table, method, extras, cost, bound);
    }

    private Solution free() {
        CostVector least = Bound.of(problem, extras);
        Optional<Factor.Outcome> outcome = Factor.solve(problem, extras, least);
        CostVector bound = outcome.map(found -> greater(found.bound(), least)).orElse(least);
        Stepwise stepwise = new Stepwise(problem, extras, bound);
        List<int[]> begun =
                outcome.map(Factor.Outcome::begun).orElseGet(() -> Factor.withThirds(problem, extras, bound));
        boolean split = outcome.isPresent() && !begun.isEmpty() && begun.size() == problem.rounds();
        PartnerTable table = split ? stepwise.continued(begun) : stepwise.best(begun);
        Method method = split ? Method.FACTOR : Method.STEPWISE;
        CostVector cost = TableCost.tally(problem, table);
        if (cost.compareTo(bound) > 0) {
            return searched(table, method, bound);
        }
        return new Solution(problem, table, method, extras, cost, bound);
    }

    /** A small class is looked through to the end; then whatever is found costs as little as can be. */
    private Solution searched(PartnerTable table, Method method, CostVector bound) {
        CostVector known = TableCost.tally(problem, table);
        Optional<Exhaustive.Outcome> outcome = Exhaustive.search(problem, extras, known);
        Optional<PartnerTable> better = outcome.flatMap(Exhaustive.Outcome::better);
        PartnerTable best = better.orElse(table);
        CostVector cost = TableCost.tally(problem, best);
        return new Solution(
                problem,
                best,
                better.isPresent() ? Method.EXHAUSTIVE : method,
                extras,
                cost,
                outcome.isPresent() ? cost : bound);
    }

    private static CostVector greater(CostVector one, CostVector other) {
        return Collections.max(List.of(one, other));
    }
}
