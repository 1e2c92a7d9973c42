package org.drillwright.plan.match;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Factors of graphs small enough to be drawn, and their splits. */
class RegularFactorTest {

    /** The three ways to pair four: 0-1 and 2-3 weigh 2, 0-2 and 1-3 weigh 4, 0-3 and 1-2 weigh 18. */
    private static final List<Edge> FOUR = List.of(
            new Edge(0, 1, 1),
            new Edge(2, 3, 1),
            new Edge(0, 2, 2),
            new Edge(1, 3, 2),
            new Edge(0, 3, 9),
            new Edge(1, 2, 9));

    private static final List<Edge> TWO_TRIANGLES = List.of(
            new Edge(0, 1, 0),
            new Edge(1, 2, 0),
            new Edge(0, 2, 0),
            new Edge(3, 4, 0),
            new Edge(4, 5, 0),
            new Edge(3, 5, 0));

    /** The triangles above joined by three rungs: a prism. */
    private static final List<Edge> PRISM = prism();

    private static List<Edge> prism() {
        List<Edge> prism = new ArrayList<>(TWO_TRIANGLES);
        for (int one = 0; one < 3; one++) {
            prism.add(new Edge(one, one + 3, 5));
        }
        return List.copyOf(prism);
    }

    private static Optional<List<Edge>> lightest(int vertices, List<Edge> edges, int times) {
        int[] degrees = new int[vertices];
        Arrays.fill(degrees, times);
        return RegularFactor.lightest(degrees, edges)
                .map(used -> used.stream().mapToObj(edges::get).toList());
    }

    /** 0 and 1 meet a last vertex that stands for two: both in the same round, each time another copy if one is forbidden. */
    @Test
    void a_vertex_that_stands_for_two_is_met_twice_a_round() {
        List<Edge> edges =
                List.of(new Edge(0, 1, 9), new Edge(0, 2, 1), new Edge(0, 2, 2), new Edge(1, 2, 1), new Edge(1, 2, 2));
        BitSet used = RegularFactor.lightest(new int[] {2, 2, 4}, edges).orElseThrow();
        assertEquals(BitSet.valueOf(new long[] {0b11110}), used);
        List<Edge> factor = edges.subList(1, 5);
        List<int[]> rounds = RegularFactor.split(3, factor, 2, 2, (vertex, copy) -> vertex != 0 || copy == 1);
        assertEquals(2, rounds.size());
        rounds.forEach(round -> assertArrayEquals(new int[] {3, 2, 1, 0}, round));
    }

    /** Each vertex misses as many of the others as it is not to meet: the dearest ways are left out. */
    @ParameterizedTest(name = "each {0} times")
    @ValueSource(ints = {1, 2, 3})
    void of_four_the_cheapest_ways_to_pair_them_are_taken(int times) {
        assertEquals(Optional.of(FOUR.subList(0, 2 * times)), lightest(4, FOUR, times));
    }

    @Test
    void a_factor_asked_too_often_does_not_exist() {
        assertTrue(lightest(4, FOUR, 4).isEmpty());
    }

    /** Each triangle has three, an odd number, and nobody outside it to meet. */
    @Test
    void two_triangles_meet_twice_but_not_once() {
        assertTrue(lightest(6, TWO_TRIANGLES, 1).isEmpty());
        assertEquals(Optional.of(TWO_TRIANGLES), lightest(6, TWO_TRIANGLES, 2));
    }

    /** Twice: the triangles for nothing. Once: a rung each for 15, or one rung and the edges opposite to it for 5. */
    @Test
    void a_prism_takes_its_dear_rungs_only_when_it_must() {
        assertEquals(Optional.of(TWO_TRIANGLES), lightest(6, PRISM, 2));
        assertEquals(
                5,
                lightest(6, PRISM, 1).orElseThrow().stream()
                        .mapToInt(Edge::weight)
                        .sum());
        assertEquals(Optional.of(PRISM), lightest(6, PRISM, 3));
    }

    @Test
    void a_vertex_without_edges_has_no_factor() {
        assertTrue(lightest(2, List.of(), 1).isEmpty());
    }

    /** Of an even ring every other edge is one round, and the rest the other. */
    @Test
    void a_ring_of_six_splits_in_one_way() {
        List<Edge> ring = IntStream.range(0, 6)
                .mapToObj(one -> new Edge(one, (one + 1) % 6, 0))
                .toList();
        List<int[]> rounds = RegularFactor.split(6, ring, 2, 1, RegularFactor.Copies.NONE);
        assertEquals(
                Set.of(List.of(1, 0, 3, 2, 5, 4), List.of(5, 2, 1, 4, 3, 0)),
                Set.of(listed(rounds.get(0)), listed(rounds.get(1))));
    }

    private static List<Integer> listed(int[] mates) {
        return IntStream.of(mates).boxed().toList();
    }

    @Test
    void all_ways_to_pair_four_are_three_rounds() {
        List<int[]> rounds = RegularFactor.split(4, FOUR, 3, 1, RegularFactor.Copies.NONE);
        Set<List<Integer>> different = new HashSet<>();
        rounds.forEach(round -> different.add(listed(round)));
        assertEquals(Set.of(List.of(1, 0, 3, 2), List.of(2, 3, 0, 1), List.of(3, 2, 1, 0)), different);
        assertEquals(3, rounds.size());
    }

    @Test
    void two_triangles_have_no_split() {
        assertTrue(RegularFactor.split(6, TWO_TRIANGLES, 2, 1, RegularFactor.Copies.NONE)
                .isEmpty());
    }

    /**
     * Everybody meets the three neighbours in Petersen's graph: it has perfect matchings (Petersen 1891), and what is left of it
     * without any of them is two rings of five, which have none. So just one is found, not three.
     */
    @Test
    void of_petersens_graph_one_matching_is_found() {
        List<Edge> edges = IntStream.range(0, 5)
                .boxed()
                .flatMap(at -> Stream.of(
                        new Edge(at, (at + 1) % 5, 0), new Edge(at, 5 + at, 0), new Edge(5 + at, 5 + (at + 2) % 5, 0)))
                .toList();
        assertEquals(
                1,
                RegularFactor.split(10, edges, 3, 1, RegularFactor.Copies.NONE).size());
    }

    @Test
    void nobody_passes_any_number_of_rounds() {
        List<int[]> rounds = RegularFactor.split(0, List.of(), 2, 1, RegularFactor.Copies.NONE);
        assertEquals(2, rounds.size());
        assertArrayEquals(new int[0], rounds.get(0));
    }
}
