package org.drillwright.plan.match;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.plan.proof.Certificate;
import org.jgrapht.Graph;
import org.jgrapht.alg.matching.SparseEdmondsMaximumCardinalityMatching;
import org.jgrapht.alg.matching.blossom.v5.KolmogorovWeightedPerfectMatching;
import org.jgrapht.alg.matching.blossom.v5.ObjectiveSense;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;

/** Matchings in a general graph, by Edmonds' blossoms. The same edges in the same order give the same matching. */
public final class Matching {

    /** Stands in a table of mates for nobody. */
    public static final int NOBODY = -1;

    private Matching() {}

    /**
     * A perfect matching of least total weight, as each vertex's mate; empty if there is no perfect matching.
     *
     * @param vertices their number; they are counted from 0
     */
    public static Optional<int[]> leastWeight(int vertices, List<Edge> edges) {
        return proved(vertices, edges).map(Proved::mates);
    }

    /** A matching of least weight with what proves it. */
    static final class Proved {

        private final int[] mates;
        private final Map<Set<Integer>, Double> numbers;

        /** @param numbers of vertices and odd sets, as {@link Certificate} takes them */
        Proved(int[] mates, Map<Set<Integer>, Double> numbers) {
            this.mates = mates;
            this.numbers = numbers;
        }

        int[] mates() {
            return mates;
        }

        Map<Set<Integer>, Double> numbers() {
            return numbers;
        }
    }

    static Optional<Proved> proved(int vertices, List<Edge> edges) {
        if (vertices % 2 != 0 || !touchesAll(vertices, edges)) {
            return Optional.empty();
        }
        if (vertices == 0) {
            return Optional.of(new Proved(new int[0], Map.of()));
        }
        Graph<Integer, DefaultWeightedEdge> graph = graph(vertices, edges);
        try {
            // Minimising is the sense that has been tried against an exact search; maximising has an open issue.
            var matcher = new KolmogorovWeightedPerfectMatching<>(graph, ObjectiveSense.MINIMIZE);
            int[] mates = mates(vertices, graph, matcher.getMatching().getEdges());
            Map<Set<Integer>, Double> numbers = matcher.getDualSolution().getDualVariables();
            mustBeProved(vertices, edges, mates, numbers);
            return Optional.of(new Proved(mates, numbers));
        } catch (IllegalArgumentException noPerfectMatching) {
            return Optional.empty();
        }
    }

    /** What follows builds on it that nothing weighs less. */
    private static void mustBeProved(int vertices, List<Edge> edges, int[] mates, Map<Set<Integer>, Double> numbers) {
        int[][] plain = edges.stream()
                .map(edge -> new int[] {edge.one(), edge.other(), edge.weight()})
                .toArray(int[][]::new);
        if (!new Certificate(vertices, numbers).proves(plain, mates)) {
            throw new IllegalStateException("a matching of " + vertices + " vertices isn't proved to weigh least");
        }
    }

    /** A matching of as many vertices as can be matched; the mate of a vertex left alone is {@link #NOBODY}. */
    public static int[] largest(int vertices, List<Edge> edges) {
        if (edges.isEmpty()) {
            int[] alone = new int[vertices];
            Arrays.fill(alone, NOBODY);
            return alone;
        }
        Graph<Integer, DefaultWeightedEdge> graph = graph(vertices, edges);
        var matching = new SparseEdmondsMaximumCardinalityMatching<>(graph).getMatching();
        return mates(vertices, graph, matching.getEdges());
    }

    private static boolean touchesAll(int vertices, List<Edge> edges) {
        boolean[] touched = new boolean[vertices];
        for (Edge edge : edges) {
            touched[edge.one()] = true;
            touched[edge.other()] = true;
        }
        for (boolean one : touched) {
            if (!one) {
                return false;
            }
        }
        return true;
    }

    private static Graph<Integer, DefaultWeightedEdge> graph(int vertices, List<Edge> edges) {
        Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        for (int vertex = 0; vertex < vertices; vertex++) {
            graph.addVertex(vertex);
        }
        for (Edge edge : edges) {
            DefaultWeightedEdge added = graph.addEdge(edge.one(), edge.other());
            graph.setEdgeWeight(added, edge.weight());
        }
        return graph;
    }

    private static int[] mates(
            int vertices, Graph<Integer, DefaultWeightedEdge> graph, Set<DefaultWeightedEdge> matched) {
        int[] mates = new int[vertices];
        Arrays.fill(mates, NOBODY);
        for (DefaultWeightedEdge edge : matched) {
            int one = graph.getEdgeSource(edge);
            int other = graph.getEdgeTarget(edge);
            mates[one] = other;
            mates[other] = one;
        }
        return mates;
    }
}
