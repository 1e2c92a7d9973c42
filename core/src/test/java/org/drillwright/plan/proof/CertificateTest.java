package org.drillwright.plan.proof;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Proofs worked out by hand, and what is wrong with others. */
class CertificateTest {

    /** 0-1 and 2-3 weigh 1 each, all else 5. */
    private static final int[][] FOUR = {{0, 1, 1}, {2, 3, 1}, {0, 2, 5}, {1, 3, 5}, {0, 3, 5}, {1, 2, 5}};

    private static Map<Set<Integer>, Double> numbers(double... alone) {
        Map<Set<Integer>, Double> numbers = new LinkedHashMap<>();
        for (int vertex = 0; vertex < alone.length; vertex++) {
            numbers.put(Set.of(vertex), alone[vertex]);
        }
        return numbers;
    }

    @ParameterizedTest
    @CsvSource({
        // a half each: each edge leaves 1, and the sum is 2
        "0.5, 0.5, 0.5, 0.5, true",
        "1, 0, 0, 1, true",
        // the sum is less than the weight
        "0.5, 0.5, 0.5, 0, false",
        // 0-1 weighs less than what it leaves
        "1, 0.5, 0.5, 0, false",
        "2, 0, 0, 0, false"
    })
    void of_four_the_light_pairs_weigh_least(double a, double b, double c, double d, boolean proved) {
        assertEquals(proved, new Certificate(4, numbers(a, b, c, d)).proves(FOUR, new int[] {1, 0, 3, 2}));
    }

    @Test
    void a_matching_that_is_none_or_weighs_more_is_not_proved() {
        Certificate proof = new Certificate(4, numbers(0.5, 0.5, 0.5, 0.5));
        assertFalse(proof.proves(FOUR, new int[] {2, 3, 0, 1}));
        assertFalse(proof.proves(FOUR, new int[] {1, 2, 1, 0}));
        assertFalse(proof.proves(FOUR, new int[] {-1, -1, 3, 2}));
    }

    /**
     * Two triangles that weigh nothing, and one way out of each, 2-3, at 7. Whoever matches all six leaves the triangle
     * 0-1-2 by it, so 7 is the least; without the triangle nothing more than 3.5 + 3.5 at the ends could be said, and the
     * triangles' edges forbid that.
     */
    @Test
    void an_odd_set_is_left_at_least_once() {
        int[][] edges = {{0, 1, 0}, {1, 2, 0}, {0, 2, 0}, {3, 4, 0}, {4, 5, 0}, {3, 5, 0}, {2, 3, 7}};
        int[] mates = {1, 0, 3, 2, 5, 4};
        Map<Set<Integer>, Double> numbers = numbers(0, 0, 0, 0, 0, 0);
        assertFalse(new Certificate(6, numbers).proves(edges, mates));
        numbers.put(Set.of(0, 1, 2), 7.0);
        assertTrue(new Certificate(6, numbers).proves(edges, mates));
        numbers.put(Set.of(0, 1, 2), 8.0);
        numbers.put(Set.of(3, 4, 5), -1.0);
        assertFalse(new Certificate(6, numbers).proves(edges, mates), "a set counts less than nothing");
        numbers.remove(Set.of(3, 4, 5));
        numbers.put(Set.of(0, 1, 2), 0.0);
        numbers.put(Set.of(0, 1), 7.0);
        assertFalse(new Certificate(6, numbers).proves(edges, mates), "an even set");
    }

    /** 1 unit of the first cost must outweigh 2 edges of 3 units of the second. */
    @ParameterizedTest
    @CsvSource({"7, true", "6, false"})
    void multipliers_keep_the_order(long first, boolean kept) {
        assertEquals(kept, Multipliers.keepOrder(new long[] {first, 1}, new long[] {1, 3}, new long[] {2, 2}));
        assertTrue(Multipliers.keepOrder(new long[] {first, 1}, new long[] {0, 3}, new long[] {2, 2}));
    }

    /** Perfect matchings of 2t are (2t - 1)!!: 1, 3, 15, 105, 945; with k new of whom no two meet m!/(m - k)! (m - k - 1)!!. */
    @ParameterizedTest
    @CsvSource({"2,0,1", "4,0,3", "6,0,15", "8,0,105", "10,0,945", "8,3,60", "8,4,24", "12,4,5040", "8,5,0"})
    void pairings_are_as_many_as_published(int all, int fresh, long ways) {
        assertEquals(ways, count(all, 0, fresh).rounds(0, 0, 0, 0));
    }

    /** Three ways in two rounds: 11 12 13 22 23 33. */
    @ParameterizedTest
    @CsvSource({"3,2,6", "3,1,3", "1,5,1", "945,2,446985", "0,2,0", "3,0,1"})
    void choices_may_be_taken_again(long kinds, int rounds, long choices) {
        assertEquals(choices, TableCount.choices(kinds, rounds).longValueExact());
    }

    private static TableCount count(int all, int helpers, int fresh) {
        return new TableCount(all, helpers, (one, other) -> true, one -> one < fresh, (one, other) -> true);
    }

    /**
     * Three, all of whom know it: three in the middle, and who joins: 6. Five with a three: 10 times 6. Three and two helpers:
     * whom the one of them takes, 3 times 2, and the other two pair. Three new: 6 watched threes; one watched pair and one alone: 3.
     */
    @ParameterizedTest
    @CsvSource({
        "3,0,0, 0,1,0,0, 6",
        "5,0,0, 0,1,0,0, 60",
        "3,2,0, 1,0,0,0, 6",
        "3,0,3, 0,1,2,0, 6",
        "3,0,3, 0,0,1,1, 3",
        "3,0,2, 0,1,0,0, 2",
        "3,0,3, 0,0,0,3, 1"
    })
    void other_groups_are_counted_too(
            int all, int helpers, int fresh, int helped, int threes, int eyes, int alone, long ways) {
        assertEquals(ways, count(all, helpers, fresh).rounds(helped, threes, eyes, alone));
    }
}
