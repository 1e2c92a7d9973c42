package org.drillwright.plan.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** The matcher against a search through all subsets of the vertices. */
class MatchingProperties {

    private static final long NONE = Long.MAX_VALUE / 4;

    private static List<Edge> drawn(int vertices, Random chance, int largest) {
        List<Edge> edges = new ArrayList<>();
        boolean dense = chance.nextBoolean();
        for (int one = 0; one < vertices; one++) {
            for (int other = one + 1; other < vertices; other++) {
                if (dense || chance.nextBoolean()) {
                    edges.add(new Edge(one, other, chance.nextInt(largest + 1)));
                }
            }
        }
        return edges;
    }

    /** For each set of vertices, the least weight of a perfect matching of it. */
    private static long least(int vertices, List<Edge> edges) {
        long[] least = new long[1 << vertices];
        Arrays.fill(least, NONE);
        least[0] = 0;
        for (int set = 1; set < least.length; set++) {
            for (Edge edge : edges) {
                int pair = 1 << edge.one() | 1 << edge.other();
                boolean lowest = Integer.numberOfTrailingZeros(set) == edge.one();
                if (lowest && (set & pair) == pair) {
                    least[set] = Math.min(least[set], least[set & ~pair] + edge.weight());
                }
            }
        }
        return least[least.length - 1];
    }

    @Property(tries = 1000)
    void the_least_weight_is_that_of_an_exact_search(@ForAll @IntRange(min = 1, max = 6) int half, @ForAll long seed) {
        Random chance = new Random(seed);
        int vertices = 2 * half;
        List<Edge> edges = drawn(vertices, chance, chance.nextBoolean() ? 9 : LexicalWeights.LARGEST);
        Optional<int[]> mates = Matching.leastWeight(vertices, edges);
        long least = least(vertices, edges);
        assertEquals(least < NONE, mates.isPresent());
        mates.ifPresent(found -> assertEquals(least, weight(found, edges)));
    }

    private static long weight(int[] mates, List<Edge> edges) {
        long weight = 0;
        for (int one = 0; one < mates.length; one++) {
            assertEquals(one, mates[mates[one]]);
        }
        for (Edge edge : edges) {
            weight += mates[edge.one()] == edge.other() ? edge.weight() : 0;
        }
        return weight;
    }

    /** Everyone has as many partners as there are rounds, and a split uses each pair of the factor once. */
    @Property(tries = 200)
    void a_factor_meets_everyone_as_often_and_a_split_uses_it_up(
            @ForAll @IntRange(min = 1, max = 3) int half,
            @ForAll @IntRange(min = 1, max = 3) int times,
            @ForAll long seed) {
        int vertices = 2 * half;
        List<Edge> edges = drawn(vertices, new Random(seed), 99);
        int[] degrees = new int[vertices];
        Arrays.fill(degrees, times);
        Optional<List<Edge>> factor = RegularFactor.lightest(degrees, edges)
                .map(used -> used.stream().mapToObj(edges::get).toList());
        assertEquals(
                lightestFactor(vertices, edges, times),
                factor.map(MatchingProperties::sum).orElse(NONE));
        factor.map(chosen -> RegularFactor.split(vertices, chosen, times, 1, RegularFactor.Copies.NONE))
                .filter(rounds -> rounds.size() == times)
                .ifPresent(rounds -> {
                    long used = 0;
                    for (int[] round : rounds) {
                        used += weight(round, factor.get());
                    }
                    assertEquals(sum(factor.get()), used);
                });
        assertTrue(factor.isEmpty() || factor.get().size() == vertices * times / 2);
    }

    private static long sum(List<Edge> edges) {
        return edges.stream().mapToLong(Edge::weight).sum();
    }

    /** Takes each edge or not, with the degrees so far as the state. */
    private static long lightestFactor(int vertices, List<Edge> edges, int times) {
        java.util.Map<List<Integer>, Long> states = new java.util.HashMap<>();
        states.put(java.util.Collections.nCopies(vertices, 0), 0L);
        for (Edge edge : edges) {
            java.util.Map<List<Integer>, Long> next = new java.util.HashMap<>(states);
            states.forEach((degrees, weight) -> {
                List<Integer> more = new ArrayList<>(degrees);
                more.set(edge.one(), more.get(edge.one()) + 1);
                more.set(edge.other(), more.get(edge.other()) + 1);
                if (more.get(edge.one()) <= times && more.get(edge.other()) <= times) {
                    next.merge(more, weight + edge.weight(), Math::min);
                }
            });
            states = next;
        }
        return states.getOrDefault(java.util.Collections.nCopies(vertices, times), NONE);
    }
}
