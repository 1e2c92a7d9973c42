package org.drillwright.plan.rounds;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Counts what a table costs: meetings, turns and blanks of some of its rounds, added and taken away one by one. */
final class Reckoning {

    private final Problem problem;
    private final int[][] met;
    private final int[][] turns;

    /** Begins from what was before the table. */
    Reckoning(Problem problem) {
        this.problem = problem;
        int students = problem.students();
        this.met = new int[students][students];
        this.turns = new int[Aim.COUNT][students];
        for (int one = 0; one < students; one++) {
            for (Aim kind : Aim.TURNS_OF_A_KIND) {
                turns[kind.rank()][one] = problem.hadBefore(kind, one);
            }
            for (int other = 0; other < students; other++) {
                met[one][other] = problem.metBefore(one, other);
            }
        }
    }

    /** Counts all rounds of a table but one; all if that one isn't among them. */
    static Reckoning without(Problem problem, Table table, int skipped, int upTo) {
        Reckoning reckoning = new Reckoning(problem);
        for (int round = 0; round < upTo; round++) {
            if (round != skipped) {
                reckoning.add(table, round);
            }
        }
        return reckoning;
    }

    /** Counts those rounds of a table that are already found. */
    static Reckoning of(Problem problem, Table table, IntPredicate found) {
        Reckoning reckoning = new Reckoning(problem);
        IntStream.range(0, problem.rounds()).filter(found).forEach(round -> reckoning.add(table, round));
        return reckoning;
    }

    static Tally tally(Problem problem, Table table) {
        return Tally.of(costs(problem, table, problem.rounds()));
    }

    /** The costs of a table's first rounds, aim by aim. */
    static long[] costs(Problem problem, Table table, int upTo) {
        Reckoning reckoning = new Reckoning(problem);
        long[] costs = new long[Aim.COUNT];
        long[] one = new long[Aim.COUNT];
        for (int round = 0; round < upTo; round++) {
            for (int student = 0; student < problem.students(); student++) {
                int mate = table.mate(round, student);
                if (mate > student) {
                    reckoning.cost(round, student, mate, one);
                    sum(costs, one);
                }
            }
            reckoning.add(table, round);
        }
        return costs;
    }

    private static void sum(long[] costs, long[] one) {
        for (int aim = 0; aim < Aim.COUNT; aim++) {
            costs[aim] = aim == Aim.WIDEST.rank() ? Math.max(costs[aim], one[aim]) : costs[aim] + one[aim];
        }
    }

    private void add(Table table, int round) {
        for (int student = 0; student < problem.students(); student++) {
            int mate = table.mate(round, student);
            if (problem.isStudent(mate)) {
                met[student][mate]++;
                turns[Aim.WATCHED.rank()][student] += problem.areBothNew(round, student, mate) ? 1 : 0;
            } else if (mate > problem.blank()) {
                int middle = problem.joined(mate);
                met[student][middle]++;
                met[middle][student]++;
                turns[Aim.THREES.rank()][student]++;
            } else if (mate == problem.blank()) {
                turns[Aim.BLANKS.rank()][student]++;
            } else {
                turns[Aim.TURNS.rank()][student]++;
            }
        }
    }

    /** What it would cost to put two together once more in a round. */
    void cost(int round, int student, int mate, long[] into) {
        Arrays.fill(into, 0);
        if (mate == problem.blank()) {
            into[Aim.BLANKS.rank()] = turns[Aim.BLANKS.rank()][student];
        } else if (mate > problem.blank()) {
            int middle = problem.joined(mate);
            into[Aim.THREES.rank()] = turns[Aim.THREES.rank()][student];
            into[Aim.REPEATS.rank()] = met[student][middle];
            lasting(problem, round, student, middle, into);
        } else if (mate >= problem.students()) {
            into[Aim.TURNS.rank()] = turns[Aim.TURNS.rank()][student];
        } else {
            into[Aim.REPEATS.rank()] = met[student][mate];
            if (problem.areBothNew(round, student, mate)) {
                int[] watched = turns[Aim.WATCHED.rank()];
                into[Aim.WATCHED.rank()] = (long) watched[student] + watched[mate];
            }
            lasting(problem, round, student, mate, into);
        }
    }

    /** The costs that don't depend on other rounds. */
    static void lasting(Problem problem, int round, int student, int mate, long[] into) {
        Aim hands = problem.isAsking(round) ? Aim.ASKED : Aim.HANDS;
        into[hands.rank()] = problem.cost(hands, student, mate);
        into[Aim.GAP.rank()] = problem.cost(Aim.GAP, student, mate);
        into[Aim.WIDEST.rank()] = problem.cost(Aim.WIDEST, student, mate);
        into[Aim.PAST.rank()] = problem.cost(Aim.PAST, student, mate);
        into[Aim.LEVEL.rank()] = problem.cost(Aim.LEVEL, student, mate);
    }
}
