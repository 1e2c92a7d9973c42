package org.drillwright.plan.rounds;

import java.util.Arrays;
import java.util.BitSet;

/**
 * Who takes which post of a formation: in the roster's order at first, then exchanged two by two as long as that makes
 * the table better. Nobody who is new leaves the posts that are meant for them.
 */
final class Posting {

    private static final int PASSES = 20;

    /** Where the largest gap stands among the costs of two, behind the pairs that may not be made. */
    private static final int WIDEST = 1 + Aim.WIDEST.rank();

    private final Problem problem;
    private final Formation formation;
    private final BitSet novices;
    private final int[] holder;
    private final int[] post;

    Posting(Problem problem, Formation formation) {
        this.problem = problem;
        this.formation = formation;
        this.novices = problem.everStrangers();
        this.holder = new int[formation.posts()];
        this.post = new int[problem.students()];
        fill();
    }

    /** The new ones first, then the others; helpers and gaps come last. */
    private void fill() {
        int next = 0;
        for (boolean fresh : new boolean[] {true, false}) {
            for (int student = 0; student < problem.students(); student++) {
                if (novices.get(student) == fresh) {
                    put(student, next++);
                }
            }
        }
        for (int extra = 0; next < holder.length; extra++, next++) {
            holder[next] = Math.min(problem.students() + extra, problem.blank());
        }
    }

    private void put(int student, int at) {
        holder[at] = student;
        post[student] = at;
    }

    /** Exchanges people until no exchange helps. */
    Posting improved(Tally bound) {
        boolean helped = true;
        for (int pass = 0; pass < PASSES && helped && !isBest(bound); pass++) {
            helped = pass();
        }
        return this;
    }

    private boolean isBest(Tally bound) {
        return isPermitted() && Reckoning.tally(problem, table()).compareTo(bound) <= 0;
    }

    private boolean pass() {
        boolean helped = false;
        for (int one = 0; one < problem.students(); one++) {
            for (int other = one + 1; other < problem.students(); other++) {
                helped |= mayExchange(one, other) && exchangeHelps(one, other);
            }
        }
        return helped;
    }

    private boolean mayExchange(int one, int other) {
        return mayTake(one, post[other]) && mayTake(other, post[one]);
    }

    private boolean mayTake(int student, int at) {
        return !novices.get(student) || at < formation.novicePosts();
    }

    /**
     * Exchanges two if that helps. No pair meets twice in a formation, and how many turns a post has with helpers or gaps
     * stays as it is. So only what the two themselves cost changes; but the largest gap is that of the whole table.
     */
    private boolean exchangeHelps(int one, int other) {
        long[] before = costs(one, other);
        exchange(one, other);
        long[] after = costs(one, other);
        if (Arrays.mismatch(before, after) == WIDEST) {
            long others = widestBesides(one, other);
            before[WIDEST] = Math.max(before[WIDEST], others);
            after[WIDEST] = Math.max(after[WIDEST], others);
        }
        boolean helps = Arrays.compare(after, before) < 0;
        if (!helps) {
            exchange(one, other);
        }
        return helps;
    }

    /** The largest gap of all pairs without these two. */
    private long widestBesides(int one, int other) {
        long widest = 0;
        for (int round = 0; round < problem.rounds(); round++) {
            for (int student = 0; student < problem.students(); student++) {
                int mate = mate(round, student);
                boolean counts = student != one && student != other && mate != one && mate != other;
                if (counts && problem.isStudent(mate)) {
                    widest = Math.max(widest, problem.cost(Aim.GAP, student, mate));
                }
            }
        }
        return widest;
    }

    private void exchange(int one, int other) {
        int at = post[one];
        put(one, post[other]);
        put(other, at);
    }

    /** What two cost with all their partners, pairs that may not be made before all else. */
    private long[] costs(int one, int other) {
        long[] costs = new long[Aim.COUNT + 1];
        add(one, costs);
        add(other, costs);
        return costs;
    }

    private void add(int student, long[] costs) {
        long[] pair = new long[Aim.COUNT];
        for (int round = 0; round < problem.rounds(); round++) {
            int mate = mate(round, student);
            costs[0] += permits(round, student) ? 0 : 1;
            if (mate == problem.blank()) {
                costs[1 + Aim.BLANKS.rank()] += problem.hadBefore(Aim.BLANKS, student);
            } else if (!problem.isStudent(mate)) {
                costs[1 + Aim.TURNS.rank()] += problem.hadBefore(Aim.TURNS, student);
            } else {
                pair[Aim.REPEATS.rank()] = problem.metBefore(student, mate);
                Reckoning.lasting(problem, round, student, mate, pair);
                for (int aim = 0; aim < Aim.COUNT; aim++) {
                    int at = 1 + aim;
                    costs[at] = at == WIDEST ? Math.max(costs[at], pair[aim]) : costs[at] + pair[aim];
                }
            }
        }
    }

    /** Whether all pairs of the table may be made. */
    boolean isPermitted() {
        for (int round = 0; round < problem.rounds(); round++) {
            for (int student = 0; student < problem.students(); student++) {
                if (!permits(round, student)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean permits(int round, int student) {
        int mate = mate(round, student);
        return mate == problem.blank() || problem.permits(round, student, mate);
    }

    private int mate(int round, int student) {
        return holder[formation.facing(round, post[student])];
    }

    Table table() {
        int[][] mates = new int[problem.rounds()][problem.students()];
        for (int round = 0; round < mates.length; round++) {
            for (int student = 0; student < problem.students(); student++) {
                mates[round][student] = mate(round, student);
            }
        }
        return new Table(mates);
    }

    /** Where each student is on the floor in each round. */
    int place(int round, int student) {
        return formation.place(round, post[student]);
    }
}
