package org.drillwright.plan.rounds;

import java.util.Arrays;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/** Counts what a table costs: meetings, turns and blanks of some of its rounds, added and taken away one by one. */
final class TableCost {

    private final Problem problem;
    private final int[][] met;
    private final int[][] turns;

    /** Begins from what was before the table. */
    TableCost(Problem problem) {
        this.problem = problem;
        int students = problem.students();
        this.met = new int[students][students];
        this.turns = new int[Objective.COUNT][students];
        for (int one = 0; one < students; one++) {
            for (Objective kind : Objective.TURNS_OF_A_KIND) {
                turns[kind.rank()][one] = problem.hadBefore(kind, one);
            }
            for (int other = 0; other < students; other++) {
                met[one][other] = problem.metBefore(one, other);
            }
        }
    }

    /** Counts all rounds of a table but one; all if that one isn't among them. */
    static TableCost without(Problem problem, PartnerTable table, int skipped, int upTo) {
        TableCost reckoning = new TableCost(problem);
        for (int round = 0; round < upTo; round++) {
            if (round != skipped) {
                reckoning.add(table, round);
            }
        }
        return reckoning;
    }

    /** Counts those rounds of a table that are already found. */
    static TableCost of(Problem problem, PartnerTable table, IntPredicate found) {
        TableCost reckoning = new TableCost(problem);
        IntStream.range(0, problem.rounds()).filter(found).forEach(round -> reckoning.add(table, round));
        return reckoning;
    }

    static CostVector tally(Problem problem, PartnerTable table) {
        return CostVector.of(costs(problem, table, problem.rounds()));
    }

    /** The costs of a table's first rounds, aim by aim. */
    static long[] costs(Problem problem, PartnerTable table, int upTo) {
        TableCost reckoning = new TableCost(problem);
        long[] costs = new long[Objective.COUNT];
        long[] one = new long[Objective.COUNT];
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
        for (int aim = 0; aim < Objective.COUNT; aim++) {
            costs[aim] = aim == Objective.WIDEST.rank() ? Math.max(costs[aim], one[aim]) : costs[aim] + one[aim];
        }
    }

    private void add(PartnerTable table, int round) {
        for (int student = 0; student < problem.students(); student++) {
            int mate = table.mate(round, student);
            if (problem.isStudent(mate)) {
                met[student][mate]++;
                turns[Objective.WATCHED.rank()][student] += problem.areBothNew(round, student, mate) ? 1 : 0;
            } else if (mate > problem.blank()) {
                int middle = problem.joined(mate);
                met[student][middle]++;
                met[middle][student]++;
                turns[Objective.THREES.rank()][student]++;
            } else if (mate == problem.blank()) {
                turns[Objective.BLANKS.rank()][student]++;
            } else {
                turns[Objective.TURNS.rank()][student]++;
            }
        }
    }

    /** What it would cost to put two together once more in a round. */
    void cost(int round, int student, int mate, long[] into) {
        Arrays.fill(into, 0);
        if (mate == problem.blank()) {
            into[Objective.BLANKS.rank()] = turns[Objective.BLANKS.rank()][student];
        } else if (mate > problem.blank()) {
            int middle = problem.joined(mate);
            into[Objective.THREES.rank()] = turns[Objective.THREES.rank()][student];
            into[Objective.REPEATS.rank()] = met[student][middle];
            lasting(problem, round, student, middle, into);
        } else if (mate >= problem.students()) {
            into[Objective.TURNS.rank()] = turns[Objective.TURNS.rank()][student];
        } else {
            into[Objective.REPEATS.rank()] = met[student][mate];
            if (problem.areBothNew(round, student, mate)) {
                int[] watched = turns[Objective.WATCHED.rank()];
                into[Objective.WATCHED.rank()] = (long) watched[student] + watched[mate];
            }
            lasting(problem, round, student, mate, into);
        }
    }

    /** The costs that don't depend on other rounds. */
    static void lasting(Problem problem, int round, int student, int mate, long[] into) {
        Objective hands = problem.isAsking(round) ? Objective.ASKED : Objective.HANDS;
        into[hands.rank()] = problem.cost(hands, student, mate);
        into[Objective.GAP.rank()] = problem.cost(Objective.GAP, student, mate);
        into[Objective.WIDEST.rank()] = problem.cost(Objective.WIDEST, student, mate);
        into[Objective.PAST.rank()] = problem.cost(Objective.PAST, student, mate);
        into[Objective.LEVEL.rank()] = problem.cost(Objective.LEVEL, student, mate);
    }
}
