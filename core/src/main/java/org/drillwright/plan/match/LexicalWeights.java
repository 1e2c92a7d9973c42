package org.drillwright.plan.match;

import org.drillwright.plan.proof.Multipliers;

/**
 * Folds several costs of an edge, the most important first, into one whole number, so that the sum over a matching puts
 * matchings into the very order in which their cost vectors stand.
 *
 * <p>Proof: the last cost counts once. Each earlier one counts 1 + (the most that all later ones together can reach in
 * one matching), so one unit of it outweighs any difference in them. No weight passes {@link #LARGEST}; where the costs
 * don't all fit below it, the least important are left out, never bent. Beyond about 10^10 the matcher reports solvable
 * graphs as unsolvable (JGraphT issue 1232), and doubles hold whole numbers exactly only up to 2^53.
 */
final class LexicalWeights {

    /** The largest weight of an edge. */
    public static final int LARGEST = 1_000_000_000;

    /** Sums and products stop here: whatever is so large fits nowhere, and never overflows. */
    private static final long TOO_LARGE = 2L * LARGEST;

    private final long[] factors;

    private LexicalWeights(long[] factors) {
        this.factors = factors;
    }

    /**
     * The weights for as many of the costs as fit.
     *
     * @param most for each cost, the most that one edge can have, 0 or more
     * @param edges for each cost, how many edges of one matching can have it above 0
     */
    public static LexicalWeights fitting(long[] most, long[] edges) {
        int levels = most.length;
        while (largest(factors(most, edges, levels), most) > LARGEST) {
            levels--;
        }
        long[] factors = factors(most, edges, levels);
        if (!Multipliers.keepOrder(factors, most, edges)) {
            throw new IllegalStateException("multipliers that bend the order of aims");
        }
        return new LexicalWeights(factors);
    }

    private static long[] factors(long[] most, long[] edges, int levels) {
        long[] factors = new long[levels];
        long below = 0;
        for (int level = levels - 1; level >= 0; level--) {
            factors[level] = Math.addExact(1, below);
            below = Math.min(TOO_LARGE, below + capped(factors[level], capped(most[level], edges[level])));
        }
        return factors;
    }

    private static long capped(long one, long other) {
        return one == 0 || other == 0 ? 0 : one > TOO_LARGE / other ? TOO_LARGE : one * other;
    }

    private static long largest(long[] factors, long[] most) {
        long sum = 0;
        for (int level = 0; level < factors.length; level++) {
            sum = Math.min(TOO_LARGE, sum + capped(factors[level], most[level]));
        }
        return sum;
    }

    /** How many of the costs are in the weights, counted from the most important. */
    public int levels() {
        return factors.length;
    }

    /** One edge's weight. */
    public int of(long[] costs) {
        long sum = 0;
        for (int level = 0; level < factors.length; level++) {
            sum = Math.addExact(sum, Math.multiplyExact(factors[level], costs[level]));
        }
        return Math.toIntExact(sum);
    }
}
