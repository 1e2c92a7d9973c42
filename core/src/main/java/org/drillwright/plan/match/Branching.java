package org.drillwright.plan.match;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Matchings of least cost in which some edges don't go together, which no weight of single edges can say. Where two such
 * are chosen, one of them is forbidden, then the other; what costs no less than the best so far is left out.
 */
public final class Branching {

    /** Matchings looked at; beyond it the best so far is taken, which is then not known to be the least. */
    private static final int MOST = 300;

    private final int vertices;
    private final Function<int[], Optional<Choice>> wrong;
    private final long[] many;
    private Optional<LeastCosts.Found> best = Optional.empty();
    private long[] least = {Long.MAX_VALUE};
    private int looked;

    private Branching(int vertices, Function<int[], Optional<Choice>> wrong, long[] many) {
        this.vertices = vertices;
        this.many = many;
        this.wrong = wrong;
    }

    /** Two edges of a matching that don't go together. */
    public record Choice(int one, int other, int another, int last) {}

    /**
     * The matching that costs least of which nothing is wrong; empty if none was found.
     *
     * @param wrong two edges that don't go together, if a matching has such
     * @param many as {@link LeastCosts#perfect} takes it
     */
    public static Optional<LeastCosts.Found> perfect(
            int vertices, List<CostedEdge> edges, Function<int[], Optional<Choice>> wrong, long... many) {
        Branching branching = new Branching(vertices, wrong, many);
        branching.go(edges);
        return branching.best;
    }

    private void go(List<CostedEdge> edges) {
        Optional<LeastCosts.Found> found =
                looked++ < MOST ? LeastCosts.perfect(vertices, edges, many) : Optional.empty();
        if (found.isEmpty() || Arrays.compare(costs(found.get().mates(), edges), least) >= 0) {
            return;
        }
        Optional<Choice> choice = wrong.apply(found.get().mates());
        if (choice.isEmpty()) {
            best = found;
            least = costs(found.get().mates(), edges);
            return;
        }
        go(without(choice.get().one(), choice.get().other(), edges));
        go(without(choice.get().another(), choice.get().last(), edges));
    }

    private static List<CostedEdge> without(int a, int b, List<CostedEdge> edges) {
        return edges.stream()
                .filter(edge -> !(edge.one() == a && edge.other() == b) && !(edge.one() == b && edge.other() == a))
                .toList();
    }

    private long[] costs(int[] mates, List<CostedEdge> edges) {
        long[] sum = new long[many.length];
        for (CostedEdge edge : edges) {
            for (int level = 0; level < sum.length && mates[edge.one()] == edge.other(); level++) {
                sum[level] += edge.cost(level);
            }
        }
        return sum;
    }
}
