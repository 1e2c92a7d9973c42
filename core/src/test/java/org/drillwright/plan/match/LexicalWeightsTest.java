package org.drillwright.plan.match;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How far each cost outweighs the later ones, and which costs find room; worked out by hand. */
class LexicalWeightsTest {

    private static LexicalWeights fitting(long[] most, long... edges) {
        return LexicalWeights.fitting(most, edges);
    }

    /** Of 100 pairs: 1, then 1 + 9 * 100, then 901 + 901 * 5 * 100, then 451401 + 451401 * 2 * 100. */
    @Test
    void one_unit_outweighs_all_that_comes_after_it() {
        LexicalWeights weights = fitting(new long[] {1, 2, 5, 9}, 100, 100, 100, 100);
        assertEquals(4, weights.levels());
        assertEquals(1, weights.of(new long[] {0, 0, 0, 1}));
        assertEquals(901, weights.of(new long[] {0, 0, 1, 0}));
        assertEquals(451_401, weights.of(new long[] {0, 1, 0, 0}));
        assertEquals(90_731_601, weights.of(new long[] {1, 0, 0, 0}));
        assertEquals(90_731_601 + 2 * 451_401 + 5 * 901 + 9, weights.of(new long[] {1, 2, 5, 9}));
    }

    /** With all four the second would count 1 + 9900 + 9901 * 9900 = 98029801, and 99 of it pass the limit. */
    @Test
    void what_does_not_fit_is_left_out_from_the_end() {
        LexicalWeights weights = fitting(new long[] {1, 99, 99, 99}, 100, 100, 100, 100);
        assertEquals(3, weights.levels());
        assertEquals(98_029_801, weights.of(new long[] {1, 0, 0, 0}));
    }

    /** Of one pair, the first counts 1 more than the second's most; the dearest pair has both. */
    @ParameterizedTest(name = "a second cost of at most {0}: {1} fit")
    @CsvSource({"499999999,2", "500000000,1", "1000000000,1"})
    void the_dearest_pair_stays_within_the_limit(long most, int levels) {
        assertEquals(levels, fitting(new long[] {1, most}, 1, 1).levels());
    }

    @ParameterizedTest(name = "at most {0}: {1} fits")
    @CsvSource({"999999999,1", "1000000000,1", "1000000001,0"})
    void a_single_cost_may_reach_the_limit_itself(long most, int levels) {
        assertEquals(levels, fitting(new long[] {most}, 1).levels());
    }

    @Test
    void if_nothing_fits_every_pair_weighs_nothing() {
        assertEquals(0, fitting(new long[] {1_000_000_001}, 1).of(new long[] {1_000_000_001}));
    }

    /** 2^29 * 3 * 2^35 = 3 * 2^64, which a long holds as 0: the first cost would then count as little as the second. */
    @Test
    void a_product_beyond_all_numbers_is_too_large_and_not_small() {
        assertEquals(1, fitting(new long[] {1, 1L << 29}, 1, 3L << 35).levels());
    }

    @Test
    void a_cost_that_no_pair_has_takes_no_room() {
        LexicalWeights weights = fitting(new long[] {1, 0, 1}, 2, 2, 2);
        assertEquals(3, weights.levels());
        assertEquals(3, weights.of(new long[] {1, 0, 0}));
    }
}
