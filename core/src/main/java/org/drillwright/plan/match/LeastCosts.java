package org.drillwright.plan.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.plan.proof.Certificate;

/**
 * Perfect matchings that cost least, the first cost before the second and so on, however many there are. Costs that find no
 * room together in one whole number are looked at in turn.
 *
 * <p>Proof that nothing is lost: the numbers that the matcher leaves for vertices and odd sets prove a matching to be least.
 * Another weighs as little just if all its edges weigh no more than these numbers ask (they are tight) and each odd set whose
 * number isn't 0 is left by just one of them (complementary slackness; Edmonds 1965). So the next costs are looked at among
 * tight edges only, behind how many such sets an edge leaves: each perfect matching leaves each odd set at least once.
 */
public final class LeastCosts {

    private final int vertices;
    private final long[] many;
    private List<CostedEdge> edges;
    private int[] leaves;
    private int done;
    private Optional<int[]> mates = Optional.empty();

    /** What was found. */
    public static final class Found {

        private final int[] mates;
        private final int known;

        Found(int[] mates, int known) {
            this.mates = mates;
            this.known = known;
        }

        /** Each vertex's mate. */
        public int[] mates() {
            return mates.clone();
        }

        /** How many costs, from the first on, are the least there are; the others found no room even by themselves. */
        public int known() {
            return known;
        }
    }

    private LeastCosts(int vertices, List<CostedEdge> edges, long[] many) {
        this.vertices = vertices;
        this.edges = edges;
        this.many = many;
        this.leaves = new int[edges.size()];
    }

    /**
     * The matching; empty if there is none.
     *
     * @param many for each cost, how many edges of one matching can have it above 0
     */
    public static Optional<Found> perfect(int vertices, List<CostedEdge> edges, long... many) {
        LeastCosts costs = new LeastCosts(vertices, edges, many);
        boolean going = true;
        while (going && costs.done < many.length) {
            going = costs.looksOn();
        }
        return costs.mates.map(found -> new Found(found, costs.done));
    }

    /** Looks at as many costs more as find room; false if none does, or if there is no matching. */
    private boolean looksOn() {
        LexicalWeights weights = weights();
        int more = weights.levels() - 1;
        if (more < 1 && mates.isPresent()) {
            return false;
        }
        List<Edge> weighed = new ArrayList<>();
        for (int at = 0; at < edges.size(); at++) {
            CostedEdge edge = edges.get(at);
            weighed.add(new Edge(edge.one(), edge.other(), weights.of(costs(at))));
        }
        Optional<Matching.Proved> proved = Matching.proved(vertices, weighed);
        if (proved.isEmpty()) {
            if (mates.isPresent()) {
                throw new IllegalStateException("a matching of least weight that is gone among its own edges");
            }
            return false;
        }
        mates = proved.map(Matching.Proved::mates);
        done += Math.max(0, more);
        if (more > 0 && done < many.length) {
            keepTight(weighed, proved.get().numbers());
        }
        return more > 0;
    }

    /** How many odd sets the edge leaves, then the costs that weren't looked at yet. */
    private long[] costs(int at) {
        long[] costs = new long[1 + many.length - done];
        costs[0] = leaves[at];
        for (int level = done; level < many.length; level++) {
            costs[1 + level - done] = edges.get(at).cost(level);
        }
        return costs;
    }

    private LexicalWeights weights() {
        long[] most = new long[1 + many.length - done];
        for (int at = 0; at < edges.size(); at++) {
            long[] costs = costs(at);
            for (int level = 0; level < most.length; level++) {
                most[level] = Math.max(most[level], costs[level]);
            }
        }
        long[] times = new long[most.length];
        times[0] = vertices / 2;
        System.arraycopy(many, done, times, 1, many.length - done);
        return LexicalWeights.fitting(most, times);
    }

    private void keepTight(List<Edge> weighed, Map<Set<Integer>, Double> numbers) {
        Certificate certificate = new Certificate(vertices, numbers);
        List<CostedEdge> tight = new ArrayList<>();
        int[] left = new int[edges.size()];
        for (int at = 0; at < weighed.size(); at++) {
            Edge edge = weighed.get(at);
            if (certificate.isTight(edge.one(), edge.other(), edge.weight())) {
                left[tight.size()] = certificate.setsLeft(edge.one(), edge.other());
                tight.add(edges.get(at));
            }
        }
        edges = tight;
        leaves = Arrays.copyOf(left, tight.size());
    }
}
