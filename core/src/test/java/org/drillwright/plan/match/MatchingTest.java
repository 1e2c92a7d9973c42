package org.drillwright.plan.match;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Matchings small enough to be seen. */
class MatchingTest {

    /** 0-1 and 2-3 weigh 10, 0-2 and 1-3 weigh 9, 0-3 and 1-2 weigh 11. */
    private static final List<Edge> FOUR = List.of(
            new Edge(0, 1, 1),
            new Edge(2, 3, 9),
            new Edge(0, 2, 4),
            new Edge(1, 3, 5),
            new Edge(0, 3, 3),
            new Edge(1, 2, 8));

    @Test
    void the_lightest_pairs_win_though_one_of_them_is_not_the_lightest_pair() {
        assertArrayEquals(new int[] {2, 3, 0, 1}, Matching.leastWeight(4, FOUR).orElseThrow());
    }

    @Test
    void nobody_is_matched_without_effort() {
        assertArrayEquals(new int[0], Matching.leastWeight(0, List.of()).orElseThrow());
    }

    @Test
    void there_is_no_perfect_matching_of_an_odd_number() {
        assertTrue(Matching.leastWeight(3, FOUR.subList(0, 1)).isEmpty());
    }

    @Test
    void there_is_none_if_a_vertex_has_no_edge() {
        assertTrue(Matching.leastWeight(4, List.of(new Edge(0, 1, 0), new Edge(1, 2, 0)))
                .isEmpty());
        assertTrue(Matching.leastWeight(2, List.of()).isEmpty());
    }

    /** 1, 2 and 3 can only be matched with 0. */
    @Test
    void there_is_none_if_three_want_the_same_one() {
        List<Edge> star = List.of(new Edge(0, 1, 0), new Edge(0, 2, 0), new Edge(0, 3, 0));
        assertTrue(Matching.leastWeight(4, star).isEmpty());
        int[] mates = Matching.largest(4, star);
        assertEquals(
                2, Arrays.stream(mates).filter(mate -> mate == Matching.NOBODY).count());
        assertEquals(0, mates[mates[0]]);
    }

    @Test
    void without_edges_all_are_left_alone() {
        assertArrayEquals(new int[] {-1, -1, -1}, Matching.largest(3, List.of()));
    }

    /** On a path of four the middle edge alone would leave two alone. */
    @Test
    void the_largest_matching_of_a_path_leaves_nobody_alone() {
        assertArrayEquals(
                new int[] {1, 0, 3, 2},
                Matching.largest(4, List.of(new Edge(1, 2, 0), new Edge(0, 1, 0), new Edge(2, 3, 0))));
    }
}
