package org.drillwright.plan.rounds;

/** Two vertices that may be put together, and what that costs. */
final class Candidate {

    private final int one;
    private final int other;
    private final long[] costs;

    Candidate(int one, int other, long[] costs) {
        this.one = one;
        this.other = other;
        this.costs = costs;
    }

    int one() {
        return one;
    }

    int other() {
        return other;
    }

    long[] costs() {
        return costs;
    }

    boolean touches(int vertex) {
        return one == vertex || other == vertex;
    }

    boolean joins(int a, int b) {
        return touches(a) && touches(b);
    }
}
