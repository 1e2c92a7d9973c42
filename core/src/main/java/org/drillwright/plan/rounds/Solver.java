package org.drillwright.plan.rounds;

import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Finds a table: by a movement that can be walked if one serves and is wanted, else the best that can be found. */
public final class Solver {

    private final Problem problem;
    private final List<Extras> extras;

    private Solver(Problem problem) {
        this.problem = problem;
        this.extras = Extras.ofAll(problem);
    }

    /** @param walk whether a movement that can be walked goes before a better table */
    public static Solution solve(Problem problem, boolean walk) {
        Solver solver = new Solver(problem);
        return (walk ? solver.walked() : Optional.<Solution>empty()).orElseGet(solver::free);
    }

    private Optional<Solution> walked() {
        return Formations.of(problem, extras).flatMap(this::posted);
    }

    private Optional<Solution> posted(Formation formation) {
        Tally least = Bound.of(problem, extras);
        Posting posting = new Posting(problem, formation).improved(least);
        if (!posting.isPermitted()) {
            return Optional.empty();
        }
        Optional<Table> settled = settled(posting.table());
        if (settled.isEmpty()) {
            return Optional.empty();
        }
        Table table = settled.get();
        Tally cost = Reckoning.tally(problem, table);
        Tally bound = cost.compareTo(least) <= 0
                ? least
                : Factor.solve(problem, extras, least)
                        .map(outcome -> greater(outcome.bound(), least))
                        .orElse(least);
        return Optional.of(
                new Solution(problem, table, formation.method(), extras, cost, bound, Optional.of(posting::place)));
    }

    /** In a movement with gaps, whoever stands before one joins a pair, if there are thirds at all. */
    private Optional<Table> settled(Table walked) {
        Table table = walked;
        for (int round = 0; round < problem.rounds() && extras.get(round).threes() > 0; round++) {
            Reckoning before = Reckoning.without(problem, table, -1, round);
            Optional<int[]> row = Choices.of(problem, round, extras.get(round), before::cost)
                    .keeping(table.row(round))
                    .least(0, Optional.empty());
            if (row.isEmpty()) {
                return Optional.empty();
            }
            table = table.with(round, row.get());
        }
        return Optional.of(table);
    }

    private Solution free() {
        Tally least = Bound.of(problem, extras);
        Optional<Factor.Outcome> outcome = Factor.solve(problem, extras, least);
        Tally bound = outcome.map(found -> greater(found.bound(), least)).orElse(least);
        Stepwise stepwise = new Stepwise(problem, extras, bound);
        Optional<Table> split = outcome.flatMap(Factor.Outcome::table);
        Table table = split.map(stepwise::improved).orElseGet(stepwise::best);
        Method method = split.isPresent() ? Method.FACTOR : Method.STEPWISE;
        Tally cost = Reckoning.tally(problem, table);
        if (cost.compareTo(bound) > 0) {
            return searched(table, method, bound);
        }
        return new Solution(problem, table, method, extras, cost, bound, Optional.empty());
    }

    /** A small class is looked through to the end; then whatever is found costs as little as can be. */
    private Solution searched(Table table, Method method, Tally bound) {
        Tally known = Reckoning.tally(problem, table);
        Optional<Exhaustive.Outcome> outcome = Exhaustive.search(problem, extras, known);
        Optional<Table> better = outcome.flatMap(Exhaustive.Outcome::better);
        Table best = better.orElse(table);
        Tally cost = Reckoning.tally(problem, best);
        return new Solution(
                problem,
                best,
                better.isPresent() ? Method.EXHAUSTIVE : method,
                extras,
                cost,
                outcome.isPresent() ? cost : bound,
                Optional.empty());
    }

    private static Tally greater(Tally one, Tally other) {
        return Collections.max(List.of(one, other));
    }
}
