package org.drillwright.plan.match;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Matchings of least weight in which some edges don't go together, which no weight of single edges can say. Where two such
 * are chosen, one of them is forbidden, then the other; what weighs no less than the best so far is left out.
 */
public final class Branching {

    /** Matchings looked at; beyond it the best so far is taken, which is then not known to be the least. */
    private static final int MOST = 300;

    private final int vertices;
    private final Function<int[], Optional<Choice>> wrong;
    private Optional<int[]> best = Optional.empty();
    private long least = Long.MAX_VALUE;
    private int looked;

    private Branching(int vertices, Function<int[], Optional<Choice>> wrong) {
        this.vertices = vertices;
        this.wrong = wrong;
    }

    /** Two edges of a matching that don't go together. */
    public record Choice(int one, int other, int another, int last) {}

    /**
     * The matching of least weight of which nothing is wrong; empty if none was found.
     *
     * @param wrong two edges that don't go together, if a matching has such
     */
    public static Optional<int[]> leastWeight(int vertices, List<Edge> edges, Function<int[], Optional<Choice>> wrong) {
        Branching branching = new Branching(vertices, wrong);
        branching.go(edges);
        return branching.best;
    }

    private void go(List<Edge> edges) {
        Optional<int[]> mates = looked++ < MOST ? Matching.leastWeight(vertices, edges) : Optional.empty();
        if (mates.isEmpty() || weight(mates.get(), edges) >= least) {
            return;
        }
        Optional<Choice> choice = wrong.apply(mates.get());
        if (choice.isEmpty()) {
            best = mates;
            least = weight(mates.get(), edges);
            return;
        }
        go(without(choice.get().one(), choice.get().other(), edges));
        go(without(choice.get().another(), choice.get().last(), edges));
    }

    private static List<Edge> without(int a, int b, List<Edge> edges) {
        return edges.stream()
                .filter(edge -> !(edge.one() == a && edge.other() == b) && !(edge.one() == b && edge.other() == a))
                .toList();
    }

    private static long weight(int[] mates, List<Edge> edges) {
        return edges.stream()
                .filter(edge -> mates[edge.one()] == edge.other())
                .mapToLong(Edge::weight)
                .sum();
    }
}
