package org.drillwright.plan.proof;

import java.math.BigInteger;
import java.util.function.IntBinaryOperator;

/** How many tables there are, counted without making one. */
public final class TableCount {

    private TableCount() {}

    /**
     * In how many ways all can be paired.
     *
     * @param vertices at most 20
     * @param permits 1 for two that may be paired, else 0; asked with the smaller number first
     */
    public static long pairings(int vertices, IntBinaryOperator permits) {
        long[] ways = new long[1 << vertices];
        ways[0] = 1;
        for (int paired = 1; paired < ways.length; paired++) {
            int first = Integer.numberOfTrailingZeros(paired);
            for (int other = first + 1; other < vertices; other++) {
                if ((paired >> other & 1) == 1 && permits.applyAsInt(first, other) == 1) {
                    ways[paired] += ways[paired & ~(1 << first) & ~(1 << other)];
                }
            }
        }
        return ways[ways.length - 1];
    }

    /** In how many ways rounds can be chosen of some that may be taken again, the order of no account. */
    public static BigInteger choices(long kinds, int rounds) {
        BigInteger choices = BigInteger.ONE;
        for (int round = 0; round < rounds; round++) {
            choices = choices.multiply(BigInteger.valueOf(kinds + round)).divide(BigInteger.valueOf(round + 1L));
        }
        return choices;
    }
}
