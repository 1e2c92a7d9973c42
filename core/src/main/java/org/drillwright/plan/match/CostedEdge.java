package org.drillwright.plan.match;

/** Two vertices that may be matched, and what that costs, the most important first. */
public final class CostedEdge {

    private final int one;
    private final int other;
    private final long[] costs;

    /** @param costs 0 or more each, as many for each edge */
    public CostedEdge(int one, int other, long... costs) {
        this.one = one;
        this.other = other;
        this.costs = costs.clone();
    }

    static CostedEdge of(Edge edge) {
        return new CostedEdge(edge.one(), edge.other(), edge.weight());
    }

    public int one() {
        return one;
    }

    public int other() {
        return other;
    }

    long cost(int level) {
        return costs[level];
    }

    /** The same costs between other ends. */
    CostedEdge between(int first, int second) {
        return new CostedEdge(first, second, costs);
    }
}
