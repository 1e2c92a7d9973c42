package org.drillwright.plan.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.drillwright.plan.proof.FlowProof;
import org.drillwright.plan.proof.FlowProof.Way;

/** Flows of few places against a search that tries every number of units over every arc. */
class LeastFlowProperties {

    private static final long NONE = Long.MAX_VALUE;

    private static List<Way> drawn(int places, Random chance) {
        List<Way> ways = new ArrayList<>();
        for (int way = 0; way < 7; way++) {
            int from = chance.nextInt(places);
            int to = chance.nextInt(places);
            if (from != to) {
                ways.add(new Way(from, to, 1 + chance.nextInt(2), chance.nextInt(6), chance.nextInt(3)));
            }
        }
        return ways;
    }

    private static long least(List<Way> ways, int at, int[] due, long cost) {
        if (at == ways.size()) {
            for (int one : due) {
                if (one != 0) {
                    return NONE;
                }
            }
            return cost;
        }
        Way way = ways.get(at);
        long best = NONE;
        for (int units = 0; units <= way.most(); units++) {
            due[way.from()] -= units;
            due[way.to()] += units;
            best = Math.min(best, least(ways, at + 1, due, cost + cost(way, units)));
            due[way.from()] += units;
            due[way.to()] -= units;
        }
        return best;
    }

    private static long cost(Way way, int units) {
        long cost = 0;
        for (int unit = 0; unit < units; unit++) {
            cost += way.first() + unit * way.step();
        }
        return cost;
    }

    @Property(tries = 300)
    void no_flow_costs_less(
            @ForAll @IntRange(min = 2, max = 5) int places,
            @ForAll @IntRange(min = 0, max = 3) int wanted,
            @ForAll long seed) {
        List<Way> ways = drawn(places, new Random(seed));
        int[] due = new int[places];
        due[0] = wanted;
        due[places - 1] = -wanted;
        long least = least(ways, 0, due, 0);
        Optional<int[]> found = LeastFlow.of(places, 0, places - 1, wanted, ways);
        assertEquals(least < NONE, found.isPresent());
        long cost = 0;
        for (int at = 0; at < ways.size() && found.isPresent(); at++) {
            cost += cost(ways.get(at), found.get()[at]);
        }
        assertEquals(least == NONE ? 0 : least, cost);
    }

    /** Two ways from 0 to 1, for 1 and for 2 each: the dear one alone isn't proved by any prices, nor is a unit lost or made. */
    @Property(tries = 100)
    void what_is_not_least_is_not_proved(@ForAll @IntRange(min = -3, max = 3) int price) {
        FlowProof proof = new FlowProof(2, List.of(new Way(0, 1, 1, 1, 0), new Way(0, 1, 1, 2, 0)));
        long[] prices = {0, price};
        assertFalse(proof.proves(0, 1, 1, new int[] {0, 1}, prices));
        assertFalse(proof.proves(0, 1, 1, new int[] {1, 1}, prices));
        assertFalse(proof.proves(0, 1, 2, new int[] {2, 0}, prices));
        assertEquals(price == 1 || price == 2, proof.proves(0, 1, 1, new int[] {1, 0}, prices));
        assertTrue(new FlowProof(2, List.of()).proves(0, 1, 0, new int[0], prices));
        assertFalse(new FlowProof(2, List.of(new Way(0, 1, 2, 1, -1))).proves(0, 1, 1, new int[] {1}, prices));
    }
}
