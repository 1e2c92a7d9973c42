package org.drillwright.plan.rounds;

import java.util.BitSet;

/**
 * Who takes which post of a formation: in the roster's order at first, then exchanged two by two as long as that makes
 * the table better. Nobody who is new leaves the posts that are meant for them.
 */
final class Posting {

    private static final int LARGE = 60;

    private final Problem problem;
    private final Formation formation;
    private final BitSet novices;
    private final int[] holder;
    private final int[] post;

    Posting(Problem problem, Formation formation) {
        this.problem = problem;
        this.formation = formation;
        this.novices = problem.everNovices();
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
        int passes = problem.students() > LARGE ? 2 : 12;
        boolean helped = true;
        for (int pass = 0; pass < passes && helped && score().compareTo(new Score(0, bound)) > 0; pass++) {
            helped = pass();
        }
        return this;
    }

    private boolean pass() {
        boolean helped = false;
        Score best = score();
        for (int one = 0; one < problem.students(); one++) {
            for (int other = one + 1; other < problem.students(); other++) {
                if (mayExchange(one, other)) {
                    exchange(one, other);
                    Score score = score();
                    if (score.compareTo(best) < 0) {
                        best = score;
                        helped = true;
                    } else {
                        exchange(one, other);
                    }
                }
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

    private void exchange(int one, int other) {
        int at = post[one];
        put(one, post[other]);
        put(other, at);
    }

    /** Pairs that may not be made come before all costs. */
    private record Score(int forbidden, Tally tally) implements Comparable<Score> {
        @Override
        public int compareTo(Score other) {
            int first = Integer.compare(forbidden, other.forbidden);
            return first != 0 ? first : tally.compareTo(other.tally);
        }
    }

    private Score score() {
        return new Score(forbidden(), Reckoning.tally(problem, table()));
    }

    /** How many pairs of the table may not be made. */
    int forbidden() {
        int forbidden = 0;
        for (int round = 0; round < problem.rounds(); round++) {
            for (int student = 0; student < problem.students(); student++) {
                int mate = mate(round, student);
                forbidden += mate != problem.blank() && !problem.permits(round, student, mate) ? 1 : 0;
            }
        }
        return forbidden;
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
