package org.drillwright.plan.match;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.proof.FlowProof;
import org.drillwright.plan.proof.FlowProof.Way;

/**
 * Units sent from one place to another over arcs, at the least cost in all; further units over an arc may cost more than its
 * first. Shortest paths at prices of the places, then all that goes along them at once, until all are sent. What is found
 * is proved by these prices ({@link FlowProof}).
 */
public final class LeastFlow {

    private static final long FAR = Long.MAX_VALUE;

    private final int source;
    private final int sink;
    private final List<Way> ways;
    private final int[][] touching;
    private final int[] units;
    private final long[] prices;
    private final int[] levels;
    private final int[] next;

    private LeastFlow(int places, int source, int sink, List<Way> ways) {
        this.source = source;
        this.sink = sink;
        this.ways = ways;
        this.units = new int[ways.size()];
        this.prices = new long[places];
        this.levels = new int[places];
        this.next = new int[places];
        List<List<Integer>> at = new ArrayList<>();
        for (int place = 0; place < places; place++) {
            at.add(new ArrayList<>());
        }
        for (int way = 0; way < ways.size(); way++) {
            at.get(ways.get(way).from()).add(way);
            at.get(ways.get(way).to()).add(way);
        }
        this.touching = at.stream()
                .map(some -> some.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    /**
     * How many go over each arc; empty if so many can't be sent.
     *
     * @param places their number; they are counted from 0
     * @param ways of costs not below 0
     */
    public static Optional<int[]> of(int places, int source, int sink, int wanted, List<Way> ways) {
        LeastFlow flow = new LeastFlow(places, source, sink, ways);
        int sent = 0;
        while (sent < wanted) {
            if (!flow.priced()) {
                return Optional.empty();
            }
            while (sent < wanted && flow.leveled()) {
                Arrays.fill(flow.next, 0);
                sent += flow.pushed(source, wanted - sent);
            }
        }
        if (!new FlowProof(places, ways).proves(source, sink, wanted, flow.units, flow.prices)) {
            throw new IllegalStateException("a flow over " + ways.size() + " arcs isn't proved to cost least");
        }
        return Optional.of(flow.units);
    }

    /** Whether one more unit may go over an arc away from a place, or one that came may go back. */
    private boolean isOpen(int way, int place) {
        return ways.get(way).from() == place ? units[way] < ways.get(way).most() : units[way] > 0;
    }

    private int far(int way, int place) {
        return ways.get(way).from() == place
                ? ways.get(way).to()
                : ways.get(way).from();
    }

    /** What it costs beside the prices to send one more over an arc away from a place, or to take one back. */
    private long loss(int way, int place) {
        Way one = ways.get(way);
        long cost = one.from() == place
                ? one.first() + units[way] * one.step()
                : -one.first() - (units[way] - 1) * one.step();
        return cost + prices[place] - prices[far(way, place)];
    }

    /** Raises the prices so that the shortest paths to the sink cost nothing beside them; false if there is none. */
    private boolean priced() {
        long[] distance = new long[prices.length];
        Arrays.fill(distance, FAR);
        distance[source] = 0;
        boolean[] done = new boolean[prices.length];
        for (int place = source; place >= 0 && place != sink; place = nearest(distance, done)) {
            done[place] = true;
            for (int way : touching[place]) {
                int far = far(way, place);
                if (!done[far] && isOpen(way, place)) {
                    distance[far] = Math.min(distance[far], distance[place] + loss(way, place));
                }
            }
        }
        if (distance[sink] == FAR) {
            return false;
        }
        for (int place = 0; place < prices.length; place++) {
            prices[place] += Math.min(distance[place], distance[sink]);
        }
        return true;
    }

    private static int nearest(long[] distance, boolean[] done) {
        int nearest = -1;
        for (int place = 0; place < distance.length; place++) {
            if (!done[place] && distance[place] < FAR && (nearest < 0 || distance[place] < distance[nearest])) {
                nearest = place;
            }
        }
        return nearest;
    }

    /** Counts how many arcs that cost nothing beside the prices lead to each place; whether they lead to the sink. */
    private boolean leveled() {
        Arrays.fill(levels, -1);
        levels[source] = 0;
        ArrayDeque<Integer> open = new ArrayDeque<>(List.of(source));
        while (!open.isEmpty() && levels[sink] < 0) {
            int place = open.remove();
            for (int way : touching[place]) {
                int far = far(way, place);
                if (levels[far] < 0 && isOpen(way, place) && loss(way, place) == 0) {
                    levels[far] = levels[place] + 1;
                    open.add(far);
                }
            }
        }
        return levels[sink] >= 0;
    }

    /** Sends up to so many on from a place along such arcs; how many went. */
    private int pushed(int place, int most) {
        if (place == sink) {
            return most;
        }
        int sent = 0;
        for (; next[place] < touching[place].length && sent < most; next[place]++) {
            int way = touching[place][next[place]];
            int far = far(way, place);
            while (sent < most && levels[far] == levels[place] + 1 && isOpen(way, place) && loss(way, place) == 0) {
                int more = pushed(far, Math.min(most - sent, room(way, place)));
                if (more == 0) {
                    break;
                }
                units[way] += ways.get(way).from() == place ? more : -more;
                sent += more;
            }
            if (sent == most) {
                break;
            }
        }
        return sent;
    }

    /** Where each unit costs more than the one before, they go one by one. */
    private int room(int way, int place) {
        Way one = ways.get(way);
        return one.step() > 0 ? 1 : one.from() == place ? one.most() - units[way] : units[way];
    }
}
