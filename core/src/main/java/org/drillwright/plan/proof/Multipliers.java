package org.drillwright.plan.proof;

import java.math.BigInteger;

/** Looks after the factors by which several costs are folded into one number. */
public final class Multipliers {

    private Multipliers() {}

    /**
     * Whether one unit of each cost that any edge has outweighs all that the later ones can come to together.
     *
     * @param factors of the costs, the most important first; there may be fewer than costs
     * @param most for each cost the most that one edge can have
     * @param edges for each cost how many edges can have it
     */
    public static boolean keepOrder(long[] factors, long[] most, long[] edges) {
        BigInteger later = BigInteger.ZERO;
        for (int cost = factors.length - 1; cost >= 0; cost--) {
            BigInteger factor = BigInteger.valueOf(factors[cost]);
            if (most[cost] > 0 && factor.compareTo(later) <= 0) {
                return false;
            }
            later = later.add(
                    factor.multiply(BigInteger.valueOf(most[cost])).multiply(BigInteger.valueOf(edges[cost])));
        }
        return true;
    }
}
