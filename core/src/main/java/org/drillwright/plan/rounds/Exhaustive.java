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

    /** Students and helpers; ten can be paired in 945 ways. */
    private static final int MOST = 10;

    /** Tables begun; beyond it nothing is said to be proved. */
    private static final int STEPS = 400_000;

    private static final int NOBODY_YET = -1;
    private static final int THIRD = -2;

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
    private final Extras extras;
    private final List<Row> rows = new ArrayList<>();
    private final int[] chosen;
    private long[] least;
    private Optional<PartnerTable> best = Optional.empty();
    private int steps;
    private BigInteger lookedAt = BigInteger.ZERO;

    private Exhaustive(Problem problem, Extras extras, CostVector known) {
        this.problem = problem;
        this.extras = extras;
        this.chosen = new int[problem.rounds()];
        this.least = known.costs().stream().mapToLong(Long::longValue).toArray();
        int[] mates = new int[problem.students()];
        Arrays.fill(mates, NOBODY_YET);
        collect(mates, 0, extras);
        rows.sort(Comparator.comparing(Row::costs, Arrays::compare));
    }

    /**
     * What came of a search that went to its end.
     *
     * @param better a table that costs less than the one known, if there is one
     */
    record Outcome(Optional<PartnerTable> better) {}

    /**
     * Looks for a table that costs less than the one known; empty if the class is too large to look through.
     *
     * @param known what the best table so far costs
     */
    static Optional<Outcome> search(Problem problem, List<Extras> extras, CostVector known) {
        boolean serves = problem.rounds() > 0
                && problem.isUniform()
                && extras.stream().distinct().count() == 1;
        if (!serves || problem.students() + (extras.get(0).helpers() > 0 ? problem.helpers() : 0) > MOST) {
            return Optional.empty();
        }
        Exhaustive search = new Exhaustive(problem, extras.get(0), known);
        search.go(0, 0);
        return search.steps < STEPS && search.hasSeenAll() ? Optional.of(new Outcome(search.best)) : Optional.empty();
    }

    /** Whether the tables looked at and those left out are as many as there are; else nothing is said to be proved. */
    private boolean hasSeenAll() {
        TableCount count = new TableCount(
                problem.students(),
                problem.helpers(),
                (one, other) -> !problem.areApart(one, other),
                student -> problem.novices(0).get(student),
                (one, other) -> extras.watched() > 0 && problem.mayBeWatched(0, one, other));
        long ways = count.rounds(extras.helpers(), extras.threes(), extras.watched(), extras.blanks());
        return lookedAt.equals(TableCount.choices(ways, problem.rounds()));
    }

    /** All ways in which a round has its extras: first who works with whom, then whose pairs the others join. */
    private void collect(int[] mates, int from, Extras left) {
        int one = from;
        while (one < mates.length && mates[one] != NOBODY_YET) {
            one++;
        }
        if (rows.size() > STEPS) {
            return;
        }
        if (one == mates.length) {
            if (left.helpers() == 0 && left.blanks() == 0 && left.threes() == 0) {
                join(mates, 0, left.watched());
            }
            return;
        }
        for (int other = one + 1; other < mates.length; other++) {
            boolean watched = problem.areBothNew(0, one, other);
            if (mates[other] == NOBODY_YET && problem.permits(0, one, other) && left.watched() >= (watched ? 1 : 0)) {
                mates[one] = other;
                mates[other] = one;
                collect(mates, one + 1, less(left, 0, 0, watched ? 1 : 0, 0));
                mates[other] = NOBODY_YET;
            }
        }
        for (int helper = mates.length; helper < problem.blank() && left.helpers() > 0; helper++) {
            if (problem.permits(0, one, helper) && isFree(helper, mates)) {
                mates[one] = helper;
                collect(mates, one + 1, less(left, 1, 0, 0, 0));
            }
        }
        if (left.blanks() > 0) {
            mates[one] = problem.blank();
            collect(mates, one + 1, less(left, 0, 0, 0, 1));
        }
        if (left.threes() > 0) {
            mates[one] = THIRD;
            collect(mates, one + 1, less(left, 0, 1, 0, 0));
        }
        mates[one] = NOBODY_YET;
    }

    private static Extras less(Extras left, int helpers, int threes, int watched, int blanks) {
        return new Extras(
                left.helpers() - helpers, left.threes() - threes, left.watched() - watched, left.blanks() - blanks);
    }

    private static boolean isFree(int helper, int[] mates) {
        return Arrays.stream(mates).noneMatch(mate -> mate == helper);
    }

    private void join(int[] mates, int from, int watched) {
        int third = from;
        while (third < mates.length && mates[third] != THIRD) {
            third++;
        }
        if (third == mates.length) {
            if (watched == 0) {
                rows.add(row(mates));
            }
            return;
        }
        for (int middle = 0; middle < mates.length; middle++) {
            if (problem.isStudent(mates[middle]) && mates[middle] >= 0 && mayJoin(third, middle, mates)) {
                mates[third] = problem.third(middle);
                join(mates, third + 1, watched - (problem.areBothNew(0, third, middle) ? 1 : 0));
                mates[third] = THIRD;
            }
        }
    }

    private boolean mayJoin(int third, int middle, int[] mates) {
        int partner = mates[middle];
        boolean free = isFree(problem.third(middle), mates) && isFree(problem.third(partner), mates);
        boolean served = !problem.novices(0).get(middle)
                || (problem.areBothNew(0, middle, partner) && problem.mayBeWatched(0, third, middle));
        return free && served && !problem.areApart(third, middle) && !problem.areApart(third, partner);
    }

    private Row row(int[] mates) {
        PartnerTable alone = PartnerTable.empty(problem).with(0, mates);
        return new Row(alone.row(0), TableCost.costs(problem, alone, 1));
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
        return TableCost.costs(problem, table(rounds), rounds);
    }

    private PartnerTable table(int rounds) {
        PartnerTable table = PartnerTable.empty(problem);
        for (int round = 0; round < rounds; round++) {
            table = table.with(round, rows.get(chosen[round]).mates());
        }
        return table;
    }

    /** Whether even rounds that all cost no more than this one, and no repeats, would make it dearer than the best. */
    private boolean isHopeless(int round, Row next) {
        long[] hoped = costs(round);
        int sums = Objective.WIDEST.rank();
        for (int aim = 0; aim < sums; aim++) {
            hoped[aim] += next.costs()[aim] * (problem.rounds() - round);
        }
        hoped[sums] = Math.max(hoped[sums], next.costs()[sums]);
        return Arrays.compare(hoped, 0, sums + 1, least, 0, sums + 1) > 0;
    }
}
