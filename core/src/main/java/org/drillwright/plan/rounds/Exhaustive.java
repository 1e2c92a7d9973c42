package org.drillwright.plan.rounds;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.proof.TableCount;

/**
 * Looks through all tables of a small class whose rounds all have the same novices, the cheapest rounds first, and leaves
 * out what can't be better than the best so far. The order of rounds doesn't matter, so each set of rounds is seen once.
 */
final class Exhaustive {

    /** Students and helpers; ten can be matched in 945 ways. */
    private static final int MOST = 10;

    /** Tables begun; beyond it nothing is said to be proved. */
    private static final int STEPS = 400_000;

    /** One way to fill a round, and what it costs if there is no other. */
    private static final class Row {

        private final int[] mates;
        private final long[] costs;

        Row(int[] mates, long[] costs) {
            this.mates = mates;
            this.costs = costs;
        }

        int[] mates() {
            return mates;
        }

        long[] costs() {
            return costs;
        }
    }

    private final Problem problem;
    private final int helped;
    private final List<Row> rows = new ArrayList<>();
    private final int[] chosen;
    private long[] least;
    private Optional<Table> best = Optional.empty();
    private int steps;
    private BigInteger lookedAt = BigInteger.ZERO;

    private Exhaustive(Problem problem, int helpers, Tally known) {
        this.problem = problem;
        this.helped = problem.students() + helpers;
        this.chosen = new int[problem.rounds()];
        this.least = known.costs().stream().mapToLong(Long::longValue).toArray();
        int[] mates = new int[helped];
        Arrays.fill(mates, problem.blank());
        collect(mates, 0);
        rows.sort(Comparator.comparing(Row::costs, Arrays::compare));
    }

    /**
     * What came of a search that went to its end.
     *
     * @param better a table that costs less than the one known, if there is one
     */
    record Outcome(Optional<Table> better) {}

    /**
     * Looks for a table that costs less than the one known; empty if the class is too large to look through.
     *
     * @param known what the best table so far costs
     */
    static Optional<Outcome> search(Problem problem, List<Extras> extras, Tally known) {
        boolean serves =
                problem.rounds() > 0 && problem.isUniform() && extras.get(0).blanks() == 0;
        if (!serves || problem.students() + extras.get(0).helpers() > MOST) {
            return Optional.empty();
        }
        Exhaustive search = new Exhaustive(problem, extras.get(0).helpers(), known);
        search.go(0, 0);
        return search.steps < STEPS && search.hasSeenAll() ? Optional.of(new Outcome(search.best)) : Optional.empty();
    }

    /** Whether the tables looked at and those left out are as many as there are; else nothing is said to be proved. */
    private boolean hasSeenAll() {
        long ways = TableCount.pairings(helped, (one, other) -> problem.permits(0, one, other) ? 1 : 0);
        return lookedAt.equals(TableCount.choices(ways, problem.rounds()));
    }

    private void collect(int[] mates, int from) {
        int one = from;
        while (one < helped && mates[one] != problem.blank()) {
            one++;
        }
        if (one == helped) {
            rows.add(row(mates));
            return;
        }
        for (int other = one + 1; other < helped; other++) {
            if (mates[other] == problem.blank() && problem.permits(0, one, other)) {
                mates[one] = other;
                mates[other] = one;
                collect(mates, one + 1);
                mates[one] = problem.blank();
                mates[other] = problem.blank();
            }
        }
    }

    private Row row(int[] mates) {
        int[] students = Arrays.copyOf(mates, problem.students());
        Table alone = Table.empty(problem).with(0, students);
        return new Row(students, Reckoning.costs(problem, alone, 1));
    }

    private void go(int round, int from) {
        if (steps >= STEPS) {
            return;
        }
        if (round == problem.rounds()) {
            lookedAt = lookedAt.add(BigInteger.ONE);
            best = Optional.of(table(round));
            return;
        }
        for (int at = from; at < rows.size(); at++) {
            if (isHopeless(round, rows.get(at))) {
                leaveOut(round, at);
                return;
            }
            steps++;
            chosen[round] = at;
            if (Arrays.compare(costs(round + 1), least) >= 0) {
                leaveOut(round + 1, at);
            } else {
                go(round + 1, at);
                if (round + 1 == problem.rounds()) {
                    least = costs(round + 1);
                }
            }
        }
    }

    /** Counts the tables that go on from here with rows from one on. */
    private void leaveOut(int round, int from) {
        lookedAt = lookedAt.add(TableCount.choices(rows.size() - from, problem.rounds() - round));
    }

    private long[] costs(int rounds) {
        return Reckoning.costs(problem, table(rounds), rounds);
    }

    private Table table(int rounds) {
        Table table = Table.empty(problem);
        for (int round = 0; round < rounds; round++) {
            table = table.with(round, rows.get(chosen[round]).mates());
        }
        return table;
    }

    /** Whether even rounds that all cost no more than this one, and no repeats, would make it dearer than the best. */
    private boolean isHopeless(int round, Row next) {
        long[] hoped = costs(round);
        int sums = Aim.WIDEST.rank();
        for (int aim = 0; aim < sums; aim++) {
            hoped[aim] += next.costs()[aim] * (problem.rounds() - round);
        }
        hoped[sums] = Math.max(hoped[sums], next.costs()[sums]);
        return Arrays.compare(hoped, 0, sums + 1, least, 0, sums + 1) > 0;
    }
}
