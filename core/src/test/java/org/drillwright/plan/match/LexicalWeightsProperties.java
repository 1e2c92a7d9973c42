package org.drillwright.plan.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class LexicalWeightsProperties {

    /** Two sets of edges of one matching's size: the sums of weights are in the order of the cost vectors. */
    @Property
    void sums_of_weights_are_in_the_order_of_cost_vectors(
            @ForAll @IntRange(min = 1, max = 5) int levels,
            @ForAll @IntRange(min = 1, max = 30) int edges,
            @ForAll long seed) {
        Random chance = new Random(seed);
        long[] most = chance.longs(levels, 0, 6).toArray();
        long[] many = new long[levels];
        Arrays.fill(many, edges);
        LexicalWeights weights = LexicalWeights.fitting(most, many);
        long[][] costs = new long[2][levels];
        long[] sums = new long[2];
        for (int matching = 0; matching < 2; matching++) {
            for (int edge = 0; edge < edges; edge++) {
                long[] cost = new long[levels];
                for (int level = 0; level < levels; level++) {
                    cost[level] = chance.nextInt((int) most[level] + 1);
                    costs[matching][level] += cost[level];
                }
                sums[matching] += weights.of(cost);
            }
        }
        int kept = weights.levels();
        int wanted = Arrays.compare(costs[0], 0, kept, costs[1], 0, kept);
        assertEquals(Integer.signum(wanted), Long.signum(Long.compare(sums[0], sums[1])));
    }

    /** Even the dearest edge stays within the limit, whatever the costs and the size of the class. */
    @Property
    void no_weight_passes_the_limit(@ForAll @IntRange(min = 1, max = 9) int levels, @ForAll long seed) {
        Random chance = new Random(seed);
        long[] most = chance.longs(levels, 0, 1L << chance.nextInt(1, 40)).toArray();
        long[] many = chance.longs(levels, 0, 1L << chance.nextInt(1, 20)).toArray();
        LexicalWeights weights = LexicalWeights.fitting(most, many);
        assertTrue(weights.of(most) <= LexicalWeights.LARGEST);
    }
}
