package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The choice of least cost in one round, for four people whose three ways to pair up are called 0, 1 and 2. */
class RoundMatchingTest {

    private static final Extras NO_EXTRAS = new Extras(0, 0, 0, 0);

    private static RoundMatching choices(Problem problem, Extras extras) {
        return RoundMatching.of(problem, 0, extras, new TableCost(problem)::cost);
    }

    private static int[] least(Four four, long floor) {
        return choices(four.problem(), NO_EXTRAS).least(floor, Optional.empty()).orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void the_more_important_aim_decides(String order) {
        Four four = new Four(order, 1)
                .met(0, 1)
                .cost(1, Objective.PAST, 1, 0)
                .cost(2, Objective.LEVEL, 50, 50)
                .cost(2, Objective.HANDS, 9, 9);
        assertArrayEquals(four.row(2), least(four, 0));
    }

    /** 5 + 0 and 2 + 3 are the same sum of gaps. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void of_equal_sums_of_gaps_the_one_with_the_smaller_largest_is_taken(String order) {
        Four four = new Four(order, 1)
                .cost(0, Objective.GAP, 5, 0)
                .cost(1, Objective.GAP, 2, 3)
                .cost(2, Objective.GAP, 9, 9);
        assertArrayEquals(four.row(1), least(four, 0));
    }

    /** 5 + 0 is less than 3 + 3. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void a_smaller_largest_gap_does_not_buy_a_larger_sum(String order) {
        Four four = new Four(order, 1)
                .cost(0, Objective.GAP, 5, 0)
                .cost(1, Objective.GAP, 3, 3)
                .cost(2, Objective.GAP, 9, 9);
        assertArrayEquals(four.row(0), least(four, 0));
    }

    /** All sums are 6; the largest gaps are 6, 4 and 3, the meetings of the past 0, 1 and 2. */
    private static Four narrowerForMorePast(String order) {
        return new Four(order, 1)
                .cost(0, Objective.GAP, 6, 0)
                .cost(1, Objective.GAP, 4, 2)
                .cost(2, Objective.GAP, 3, 3)
                .cost(1, Objective.PAST, 0, 1)
                .cost(2, Objective.PAST, 1, 1);
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void the_largest_gap_goes_before_the_past(String order) {
        Four four = narrowerForMorePast(order);
        assertArrayEquals(four.row(2), least(four, 0));
        assertArrayEquals(four.row(2), least(four, 3));
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void a_gap_that_other_rounds_have_anyway_costs_nothing(String order) {
        Four four = narrowerForMorePast(order);
        assertArrayEquals(four.row(1), least(four, 4));
        assertArrayEquals(four.row(1), least(four, 5));
        assertArrayEquals(four.row(0), least(four, 6));
        assertArrayEquals(four.row(0), least(four, 7));
    }

    /**
     * Gaps of 10^8 count 3 * 10^8, and two repeats 2 * (3 + 6 * 10^8): too much for one weight together with hands. Without
     * repeats there is room, and hands decide between ways 1 and 2.
     */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void where_weights_lack_room_the_least_aim_still_decides_if_nobody_need_repeat(String order) {
        int gap = 100_000_000;
        Four four = new Four(order, 1)
                .met(0, 2)
                .cost(1, Objective.GAP, gap, gap)
                .cost(2, Objective.GAP, gap, gap)
                .cost(1, Objective.HANDS, 1, 0);
        assertArrayEquals(four.row(2), least(four, 0));
    }

    /** All have met, so the weights of repeats must stay: way 0 has met most often. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void where_all_must_repeat_the_fewest_meetings_decide_before_huge_gaps(String order) {
        int gap = 100_000_000;
        Four four = new Four(order, 1).met(0, 2).met(1, 1).met(2, 2).cost(1, Objective.GAP, gap, gap);
        assertArrayEquals(four.row(1), least(four, 0));
    }

    /**
     * Two pairs: hands count 1, gaps 1 + 2 * 1 = 3, repeats 3 + 3 * 2 * gap, and the dearest pair 1 + 3 * gap + 3 + 6 * gap,
     * for gaps of 10^8 just below 10^9. So hands decide though all repeat.
     */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void with_gaps_of_a_hundred_million_all_aims_of_four_people_have_room(String order) {
        Four four = new Four(order, 1)
                .met(0, 1)
                .met(1, 1)
                .met(2, 1)
                .cost(0, Objective.GAP, 100_000_000, 0)
                .cost(1, Objective.HANDS, 1, 0);
        assertArrayEquals(four.row(2), least(four, 0));
    }

    @Test
    void chance_leads_to_each_of_three_equal_ways() {
        Four four = new Four("012", 1);
        Set<Integer> partners = new HashSet<>();
        for (int seed = 0; seed < 60; seed++) {
            partners.add(choices(four.problem(), NO_EXTRAS)
                    .least(0, Optional.of(new SplittableRandom(seed)))
                    .orElseThrow()[0]);
        }
        assertEquals(Set.of(1, 2, 3), partners);
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void chance_never_outweighs_even_the_least_aim(String order) {
        Four four = new Four(order, 1).cost(0, Objective.HANDS, 1, 0).cost(1, Objective.HANDS, 0, 1);
        for (int seed = 0; seed < 60; seed++) {
            assertArrayEquals(
                    four.row(2),
                    choices(four.problem(), NO_EXTRAS)
                            .least(0, Optional.of(new SplittableRandom(seed)))
                            .orElseThrow());
        }
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void two_may_be_forced_together_or_parted(String order) {
        Four four = new Four(order, 1).cost(1, Objective.PAST, 1, 1).cost(2, Objective.PAST, 2, 2);
        RoundMatching all = choices(four.problem(), NO_EXTRAS);
        assertArrayEquals(
                four.row(2),
                all.forcing(four.one(2), four.other(2))
                        .least(0, Optional.empty())
                        .orElseThrow());
        assertArrayEquals(
                four.row(1),
                all.parting(four.one(0), four.other(0))
                        .least(0, Optional.empty())
                        .orElseThrow());
    }

    @Test
    void two_who_are_kept_apart_cannot_be_forced_and_an_only_pair_cannot_be_parted() {
        Problem two = new Problem(2, 0, List.of(new BitSet()));
        assertTrue(choices(two, new Extras(0, 0, 0, 0))
                .parting(0, 1)
                .least(0, Optional.empty())
                .isEmpty());
        assertTrue(choices(two.apart(0, 1), new Extras(0, 0, 0, 0))
                .forcing(0, 1)
                .least(0, Optional.empty())
                .isEmpty());
    }

    /**
     * 0, 1 and 2 are new, 3 knows the drill; of two helpers, 4 and 5, one takes somebody. So one is with 3, one with 4
     * and one alone, 6. 0 has had no turn with a helper, 1 has stood alone least often; 2 is left for 3.
     */
    @Test
    void helper_partner_and_blank_go_to_whom_they_cost_least() {
        Problem problem = new Problem(4, 2, List.of(BitSet.valueOf(new long[] {0b0111})))
                .had(Objective.TURNS, 1, 1)
                .had(Objective.TURNS, 2, 1)
                .had(Objective.TURNS, 3, 9)
                .had(Objective.BLANKS, 0, 3)
                .had(Objective.BLANKS, 1, 2)
                .had(Objective.BLANKS, 2, 3)
                .had(Objective.BLANKS, 3, 9);
        RoundMatching choices = choices(problem, new Extras(1, 0, 0, 1));
        int[] row = choices.least(0, Optional.empty()).orElseThrow();
        assertTrue(row[0] == 4 || row[0] == 5);
        row[0] = 4;
        assertArrayEquals(new int[] {4, 6, 3, 2}, row);
        assertArrayEquals(new long[] {0, 0, 0, 0, 2, 0, 0, 0, 0, 0, 0}, choices.costs(row));
        assertArrayEquals(new long[] {0, 0, 1, 0, 3, 0, 0, 0, 0, 0, 0}, choices.costs(new int[] {6, 4, 3, 2}));
    }

    /** Three stand alone, 5 stands for that; each counts once, whichever of the three blanks is theirs. */
    @Test
    void each_who_stands_alone_counts_once() {
        Problem problem = new Problem(4, 1, List.of(BitSet.valueOf(new long[] {0b1111})))
                .had(Objective.BLANKS, 0, 1)
                .had(Objective.BLANKS, 1, 2)
                .had(Objective.BLANKS, 2, 4)
                .had(Objective.BLANKS, 3, 8)
                .had(Objective.TURNS, 0, 3);
        RoundMatching choices = choices(problem, new Extras(1, 0, 0, 3));
        assertArrayEquals(new long[] {0, 0, 3, 0, 14, 0, 0, 0, 0, 0, 0}, choices.costs(new int[] {4, 5, 5, 5}));
        assertArrayEquals(new long[] {0, 0, 0, 0, 7, 0, 0, 0, 0, 0, 0}, choices.costs(new int[] {5, 5, 5, 4}));
    }

    @Test
    void a_row_costs_the_sum_of_its_pairs_and_its_largest_gap() {
        Four four = new Four("012", 1)
                .met(0, 1)
                .cost(0, Objective.GAP, 6, 2)
                .cost(0, Objective.PAST, 3, 4)
                .cost(0, Objective.LEVEL, 1, 0)
                .cost(0, Objective.HANDS, 1, 1);
        RoundMatching choices = choices(four.problem(), NO_EXTRAS);
        assertArrayEquals(new long[] {0, 2, 0, 0, 0, 0, 8, 6, 7, 1, 2}, choices.costs(four.row(0)));
        assertArrayEquals(new long[Objective.COUNT], choices.costs(four.row(1)));
    }
}
