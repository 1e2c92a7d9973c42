package org.drillwright.plan.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * The lightest set of edges that meets every vertex the same number of times, found by Tutte's reduction to one perfect
 * matching; and its split into that many perfect matchings.
 */
public final class RegularFactor {

    private static final int TRIES = 20;
    private static final int CHANCE = 1_000;

    private RegularFactor() {}

    /**
     * The lightest edges that meet every vertex {@code times} times; empty if there are none such.
     *
     * <p>Each vertex becomes {@code times} cores. Each edge becomes two nodes that are joined at no weight, the one also
     * joined to the cores of one end at the edge's weight, the other to those of the other end at none. The edge is in
     * the factor if its two nodes aren't matched to each other.
     */
    public static Optional<List<Edge>> lightest(int vertices, List<Edge> edges, int times) {
        int cores = vertices * times;
        List<Edge> reduced = new ArrayList<>();
        for (int at = 0; at < edges.size(); at++) {
            int near = cores + 2 * at;
            Edge edge = edges.get(at);
            reduced.add(new Edge(near, near + 1, 0));
            for (int core = 0; core < times; core++) {
                reduced.add(new Edge(edge.one() * times + core, near, edge.weight()));
                reduced.add(new Edge(edge.other() * times + core, near + 1, 0));
            }
        }
        return Matching.leastWeight(cores + 2 * edges.size(), reduced).map(mates -> used(edges, cores, mates));
    }

    private static List<Edge> used(List<Edge> edges, int cores, int[] mates) {
        List<Edge> used = new ArrayList<>();
        for (int at = 0; at < edges.size(); at++) {
            if (mates[cores + 2 * at] != cores + 2 * at + 1) {
                used.add(edges.get(at));
            }
        }
        return used;
    }

    /**
     * Splits a factor into perfect matchings, each as a table of mates; empty if the tries, by chance but the same ones
     * each time, found no split. Not every factor has one, and to decide it is hard in general (Holyer 1981).
     */
    public static Optional<List<int[]>> split(int vertices, List<Edge> factor, int times) {
        SplittableRandom chance = new SplittableRandom(times);
        for (int attempt = 0; attempt < TRIES; attempt++) {
            List<int[]> peeled = peeled(vertices, factor, times, chance);
            if (peeled.size() == times) {
                return Optional.of(peeled);
            }
        }
        return Optional.empty();
    }

    /** Takes away one perfect matching after another, chosen by chance, as long as there is one. */
    private static List<int[]> peeled(int vertices, List<Edge> factor, int times, SplittableRandom chance) {
        List<int[]> peeled = new ArrayList<>();
        List<Edge> left = new ArrayList<>(factor);
        while (peeled.size() < times) {
            List<Edge> shaken = left.stream()
                    .map(edge -> new Edge(edge.one(), edge.other(), chance.nextInt(CHANCE)))
                    .toList();
            Optional<int[]> mates = Matching.leastWeight(vertices, shaken);
            if (mates.isEmpty()) {
                break;
            }
            peeled.add(mates.get());
            left.removeIf(edge -> mates.get()[edge.one()] == edge.other());
        }
        return peeled;
    }
}
