package org.drillwright.plan.match;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Costs that find no room together, put to a search through all matchings that compares rows of costs. */
class LeastCostsProperties {

    private static final int LEVELS = 4;

    /** Two costs of so much pass what one weight holds, whatever the others are. */
    private static final long[][] UNITS = {
        {20_000_000, 20_000_000, 20_000_000, 1},
        {1, 1_000_000, 1_000_000, 1},
        {9_801, 9, 1, 1},
        {0, 20_000_000, 20_000_000, 3}
    };

    private static List<CostedEdge> drawn(int vertices, Random chance) {
        long[] units = UNITS[chance.nextInt(UNITS.length)];
        int steps = 1 + chance.nextInt(2);
        boolean dense = chance.nextBoolean();
        boolean threes = chance.nextBoolean();
        List<CostedEdge> edges = new ArrayList<>();
        for (int one = 0; one < vertices; one++) {
            for (int other = one + 1; other < vertices; other++) {
                if (dense || chance.nextBoolean()) {
                    long[] costs = Arrays.stream(units)
                            .map(unit -> unit * chance.nextInt(steps + 1))
                            .toArray();
                    costs[0] = threes ? (one / 3 == other / 3 ? 0 : units[0]) : costs[0];
                    edges.add(new CostedEdge(one, other, costs));
                }
            }
        }
        return edges;
    }

    /** For each set of vertices the least row of costs of a perfect matching of it. */
    private static Optional<long[]> least(int vertices, List<CostedEdge> edges) {
        List<Optional<long[]>> least = new ArrayList<>();
        least.add(Optional.of(new long[LEVELS]));
        for (int set = 1; set < 1 << vertices; set++) {
            Optional<long[]> best = Optional.empty();
            for (CostedEdge edge : edges) {
                int pair = 1 << edge.one() | 1 << edge.other();
                boolean lowest = Integer.numberOfTrailingZeros(set) == edge.one() && (set & pair) == pair;
                Optional<long[]> rest = lowest ? least.get(set & ~pair) : Optional.empty();
                if (rest.isPresent()) {
                    long[] row = plus(rest.get(), edge);
                    best = best.isEmpty() || Arrays.compare(row, best.get()) < 0 ? Optional.of(row) : best;
                }
            }
            least.add(best);
        }
        return least.get(least.size() - 1);
    }

    private static long[] plus(long[] row, CostedEdge edge) {
        long[] more = row.clone();
        for (int level = 0; level < LEVELS; level++) {
            more[level] += edge.cost(level);
        }
        return more;
    }

    /**
     * Two triangles; an edge between them costs so much in the first place, one within them in the second. One edge between
     * them there must be; three would cost nothing in the second place, but thrice as much in the first.
     */
    @Example
    void an_odd_set_is_left_no_oftener_than_need_be() {
        int much = 20_000_000;
        List<CostedEdge> edges = new ArrayList<>();
        for (int one = 0; one < 6; one++) {
            for (int other = one + 1; other < 6; other++) {
                boolean between = one < 3 && other >= 3;
                edges.add(new CostedEdge(one, other, between ? much : 0, between ? 0 : much));
            }
        }
        int[] mates = LeastCosts.perfect(6, edges, 3, 3).orElseThrow().mates();
        assertEquals(1, Arrays.stream(mates, 0, 3).filter(mate -> mate >= 3).count());
    }

    @Property(tries = 600)
    void each_cost_is_the_least_behind_those_before_it(
            @ForAll @IntRange(min = 1, max = 5) int half, @ForAll long seed) {
        int vertices = 2 * half;
        List<CostedEdge> edges = drawn(vertices, new Random(seed));
        long[] many = new long[LEVELS];
        Arrays.fill(many, half);
        Optional<LeastCosts.Found> found = LeastCosts.perfect(vertices, edges, many);
        Optional<long[]> least = least(vertices, edges);
        assertEquals(least.isPresent(), found.isPresent());
        if (found.isPresent()) {
            long[] row = new long[LEVELS];
            for (CostedEdge edge : edges) {
                row = found.get().mates()[edge.one()] == edge.other() ? plus(row, edge) : row;
            }
            assertEquals(LEVELS, found.get().known());
            assertArrayEquals(least.orElseThrow(), row);
        }
    }
}
