package org.drillwright.plan.proof;

import java.util.List;

/**
 * Why no flow costs less than one that was found: a price for each place, at which no unit more over an arc is a gain, nor
 * one less. What any other flow costs beyond it is, arc by arc, a number of units times what the prices leave of their cost,
 * and none of these is below 0 (complementary slackness; Ahuja, Magnanti and Orlin, Network Flows, 1993, from memory).
 */
public final class FlowProof {

    private final int places;
    private final List<Way> ways;

    /**
     * An arc.
     *
     * @param most how many units it takes
     * @param first what the first of them costs
     * @param step how much more each further one costs, 0 or more
     */
    public record Way(int from, int to, int most, long first, long step) {}

    /** @param places their number; they are counted from 0 */
    public FlowProof(int places, List<Way> ways) {
        this.places = places;
        this.ways = List.copyOf(ways);
    }

    /**
     * Whether the prices prove that units sent from one place to another cost as little as can be.
     *
     * @param wanted how many are sent
     * @param units over each arc
     * @param prices of the places
     */
    public boolean proves(int source, int sink, int wanted, int[] units, long[] prices) {
        long[] stays = new long[places];
        boolean sound = true;
        for (int at = 0; at < ways.size(); at++) {
            Way way = ways.get(at);
            long lost = way.first() + prices[way.from()] - prices[way.to()];
            sound &= way.step() >= 0 && units[at] >= 0 && units[at] <= way.most();
            sound &= units[at] == way.most() || lost + units[at] * way.step() >= 0;
            sound &= units[at] == 0 || lost + (units[at] - 1) * way.step() <= 0;
            stays[way.from()] -= units[at];
            stays[way.to()] += units[at];
        }
        for (int place = 0; place < places; place++) {
            long due = place == source ? -wanted : place == sink ? wanted : 0;
            sound &= stays[place] == due;
        }
        return sound;
    }
}
