package org.drillwright.plan.match;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;

/**
 * The lightest set of edges that meets every vertex a given number of times, found by Tutte's reduction to one perfect
 * matching; and the split of one that meets all equally often into as many perfect matchings.
 */
public final class RegularFactor {

    private static final int TRIES = 20;
    private static final int CHANCE = 1_000;

    private RegularFactor() {}

    /**
     * The edges, by their numbers, that cost least of those that meet each vertex as often as its degree says.
     *
     * @param known how many costs are the least there are
     */
    public record Found(BitSet used, int known) {}

    /** The same of one cost, the weight; empty if no edges meet the vertices so. */
    public static Optional<BitSet> lightest(int[] degrees, List<Edge> edges) {
        return cheapest(degrees, edges.stream().map(CostedEdge::of).toList(), edges.size())
                .map(Found::used);
    }

    /**
     * The edges of least cost that meet each vertex as often as its degree says; empty if there are none such. Two edges may
     * have the same ends.
     *
     * <p>Each vertex becomes as many cores as its degree. Each edge becomes two nodes that are joined at no weight, the one
     * also joined to the cores of one end at the edge's weight, the other to those of the other end at none. The edge is in
     * the factor if its two nodes aren't matched to each other.
     *
     * @param many for each cost how many of the edges can have it
     */
    public static Optional<Found> cheapest(int[] degrees, List<CostedEdge> edges, long... many) {
        int[] first = new int[degrees.length + 1];
        for (int vertex = 0; vertex < degrees.length; vertex++) {
            first[vertex + 1] = first[vertex] + degrees[vertex];
        }
        int cores = first[degrees.length];
        long[] nothing = new long[many.length];
        List<CostedEdge> reduced = new ArrayList<>();
        for (int at = 0; at < edges.size(); at++) {
            int near = cores + 2 * at;
            CostedEdge edge = edges.get(at);
            reduced.add(new CostedEdge(near, near + 1, nothing));
            for (int core = first[edge.one()]; core < first[edge.one() + 1]; core++) {
                reduced.add(edge.between(core, near));
            }
            for (int core = first[edge.other()]; core < first[edge.other() + 1]; core++) {
                reduced.add(new CostedEdge(core, near + 1, nothing));
            }
        }
        return LeastCosts.perfect(cores + 2 * edges.size(), reduced, many)
                .map(found -> new Found(used(edges.size(), cores, found.mates()), found.known()));
    }

    private static BitSet used(int edges, int cores, int[] mates) {
        BitSet used = new BitSet();
        for (int at = 0; at < edges; at++) {
            used.set(at, mates[cores + 2 * at] != cores + 2 * at + 1);
        }
        return used;
    }

    /** A vertex that stands for several alike, each of which is met once a round. */
    public interface Copies {

        /** None: each vertex is itself. */
        Copies NONE = (vertex, copy) -> copy == 0;

        /** Whether a vertex may meet a copy of the last vertex, counted from 0; none may meet those that aren't there. */
        boolean permits(int vertex, int copy);
    }

    /**
     * Splits a factor into perfect matchings, each as a table of mates; fewer than wanted if the tries, by chance but the same
     * ones each time, found no split: then as many as were found at once. Not every factor has a split, and to decide it is
     * hard in general (Holyer 1981).
     *
     * @param count how many the last vertex stands for; in the tables they follow one another
     */
    public static List<int[]> split(int vertices, List<Edge> factor, int times, int count, Copies copies) {
        SplittableRandom chance = new SplittableRandom(times);
        List<int[]> longest = List.of();
        for (int attempt = 0; attempt < TRIES && longest.size() < times; attempt++) {
            List<int[]> peeled = peeled(vertices, factor, times, count, copies, chance);
            longest = peeled.size() > longest.size() ? peeled : longest;
        }
        return longest;
    }

    /** Takes away one perfect matching after another, chosen by chance, as long as there is one. */
    private static List<int[]> peeled(
            int vertices, List<Edge> factor, int times, int count, Copies copies, SplittableRandom chance) {
        List<int[]> peeled = new ArrayList<>();
        List<Edge> left = new ArrayList<>(factor);
        int[][] met = new int[vertices][count];
        while (peeled.size() < times) {
            List<Edge> shaken = shaken(vertices - 1, left, met, copies, chance);
            Optional<int[]> mates = Matching.leastWeight(vertices - 1 + count, shaken);
            if (mates.isEmpty()) {
                break;
            }
            peeled.add(mates.get());
            for (int vertex = 0; vertex < vertices - 1; vertex++) {
                int copy = mates.get()[vertex] - (vertices - 1);
                if (copy >= 0) {
                    met[vertex][copy]++;
                }
            }
            BitSet taken = new BitSet();
            left.removeIf(edge -> {
                int mate = Math.min(mates.get()[edge.one()], vertices - 1);
                boolean gone = mate == edge.other() && !taken.get(edge.one());
                taken.set(edge.one(), taken.get(edge.one()) || gone);
                return gone;
            });
        }
        return peeled;
    }

    /** Among copies those come first that a vertex has met least often. */
    private static List<Edge> shaken(int last, List<Edge> left, int[][] met, Copies copies, SplittableRandom chance) {
        List<Edge> shaken = new ArrayList<>();
        Set<List<Integer>> seen = new HashSet<>();
        for (Edge edge : left) {
            if (seen.add(List.of(edge.one(), edge.other()))) {
                if (edge.other() != last) {
                    shaken.add(new Edge(edge.one(), edge.other(), chance.nextInt(CHANCE)));
                }
                for (int copy = 0; edge.other() == last && copy < met[last].length; copy++) {
                    if (copies.permits(edge.one(), copy)) {
                        int weight = chance.nextInt(CHANCE) + CHANCE * met[edge.one()][copy];
                        shaken.add(new Edge(edge.one(), last + copy, weight));
                    }
                }
            }
        }
        return shaken;
    }
}
