package org.drillwright.plan.rounds;

/** A student and a vertex that may be put together, and what that costs. */
final class Candidate {

    private final int one;
    private final int other;
    private final int mate;
    private final int price;
    private final long[] costs;

    /**
     * @param mate what stands in a table for the other
     * @param price before all costs: 1 where somebody's eyes are needed, else 0
     */
    Candidate(int one, int other, int mate, int price, long[] costs) {
        this.one = one;
        this.other = other;
        this.mate = mate;
        this.price = price;
        this.costs = costs;
    }

    int one() {
        return one;
    }

    int other() {
        return other;
    }

    int mate() {
        return mate;
    }

    int price() {
        return price;
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
