package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.roster.BothNew;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The search through all tables of a small class, against what is known of it. */
class ExhaustiveTest {

    private static Optional<Exhaustive.Outcome> search(Problem problem, long... known) {
        return Exhaustive.search(problem, Extras.ofAll(problem), CostVector.of(known));
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void a_table_that_costs_less_is_found(String order) {
        Four four = new Four(order, 1)
                .cost(0, Objective.PAST, 1, 1)
                .cost(1, Objective.PAST, 4, 1)
                .cost(2, Objective.PAST, 3, 0);
        PartnerTable better = search(four.problem(), 0, 0, 0, 0, 0, 0, 0, 0, 5, 0, 0)
                .flatMap(Exhaustive.Outcome::better)
                .orElseThrow();
        assertArrayEquals(four.row(0), Rows.of(better, 0, 4));
    }

    /** The search went to its end, so 2 is the least; but it is known. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void a_table_that_costs_the_same_is_not_better(String order) {
        Four four = new Four(order, 1)
                .cost(0, Objective.PAST, 1, 1)
                .cost(1, Objective.PAST, 4, 1)
                .cost(2, Objective.PAST, 3, 0);
        assertEquals(
                Optional.of(new Exhaustive.Outcome(Optional.empty())),
                search(four.problem(), 0, 0, 0, 0, 0, 0, 0, 0, 2, 0, 0));
    }

    /** Gaps of 2, 4 and 6 a way; in four rounds the first comes twice: 2 + 4 + 6 + 2, and two pairs repeat. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void several_rounds_are_looked_through_together(String order) {
        Problem problem = new Four(order, 4)
                .cost(0, Objective.GAP, 1, 1)
                .cost(1, Objective.GAP, 2, 2)
                .cost(2, Objective.GAP, 3, 3)
                .problem();
        PartnerTable better = search(problem, 0, 2, 0, 0, 0, 0, 16, 3, 0, 0, 0)
                .flatMap(Exhaustive.Outcome::better)
                .orElseThrow();
        assertEquals(CostVector.of(0, 2, 0, 0, 0, 0, 14, 3, 0, 0, 0), TableCost.tally(problem, better));
        assertEquals(
                Optional.of(new Exhaustive.Outcome(Optional.empty())),
                search(problem, 0, 2, 0, 0, 0, 0, 14, 3, 0, 0, 0));
    }

    /** 0 and 1 have had a turn with the helper, 3; so it is 2's. */
    @Test
    void the_helper_is_among_those_who_are_matched() {
        Problem problem = new Problem(3, 1, List.of(new BitSet()))
                .had(Objective.TURNS, 0, 1)
                .had(Objective.TURNS, 1, 1);
        PartnerTable better = search(problem, 0, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0)
                .flatMap(Exhaustive.Outcome::better)
                .orElseThrow();
        assertArrayEquals(new int[] {1, 0, 3}, Rows.of(better, 0, 3));
    }

    @ParameterizedTest(name = "{0} students, {1} help")
    @CsvSource({"10,0,true", "9,1,true", "12,0,false", "11,1,false"})
    void ten_at_most_are_looked_through(int students, int helpers, boolean served) {
        Problem problem = new Problem(students, helpers, List.of(new BitSet()));
        assertEquals(served, search(problem, new long[Objective.COUNT]).isPresent());
    }

    @Test
    void no_rounds_and_unlike_rounds_are_not_looked_through() {
        BitSet fresh = BitSet.valueOf(new long[] {0b0011});
        long[] nothing = new long[Objective.COUNT];
        assertTrue(search(new Problem(4, 0, List.of()), nothing).isEmpty());
        assertTrue(
                search(new Problem(4, 0, List.of(fresh, new BitSet())), nothing).isEmpty());
        assertTrue(search(new Problem(4, 0, Collections.nCopies(2, fresh)), nothing)
                .isPresent());
    }

    /** Three ways cost 2, 6 and 7: whichever is looked at first, the one below 5 is found. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void a_hopeless_round_does_not_hide_a_better_one(String order) {
        Four four = new Four(order, 1)
                .cost(0, Objective.GAP, 1, 1)
                .cost(1, Objective.GAP, 3, 3)
                .cost(2, Objective.GAP, 4, 3);
        PartnerTable better = search(four.problem(), 0, 0, 0, 0, 0, 0, 5, 3, 0, 0, 0)
                .flatMap(Exhaustive.Outcome::better)
                .orElseThrow();
        assertArrayEquals(four.row(0), Rows.of(better, 0, 4));
    }

    /** Each way has a sum of 6; with 3 + 3 twice the largest gap is 3, below the 4 that is known. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void the_largest_gap_of_two_rounds_is_not_their_sum(String order) {
        Problem problem = new Four(order, 2)
                .cost(0, Objective.GAP, 3, 3)
                .cost(1, Objective.GAP, 3, 3)
                .cost(2, Objective.GAP, 4, 2)
                .problem();
        PartnerTable better = search(problem, 0, 0, 0, 0, 0, 0, 12, 4, 0, 0, 0)
                .flatMap(Exhaustive.Outcome::better)
                .orElseThrow();
        assertEquals(CostVector.of(0, 0, 0, 0, 0, 0, 12, 3, 0, 0, 0), TableCost.tally(problem, better));
    }

    /** The cheapest way twice is met first, with two repeats, less than the three that are known; then it goes on. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void the_search_goes_on_after_its_first_find(String order) {
        Problem problem = new Four(order, 2)
                .cost(1, Objective.PAST, 1, 1)
                .cost(2, Objective.PAST, 2, 2)
                .problem();
        PartnerTable better = search(problem, 0, 3, 0, 0, 0, 0, 0, 0, 0, 0, 0)
                .flatMap(Exhaustive.Outcome::better)
                .orElseThrow();
        assertEquals(CostVector.of(0, 0, 0, 0, 0, 0, 0, 0, 2, 0, 0), TableCost.tally(problem, better));
    }

    /** 2 has been third once, 1 has met 0; so 0 is the third, or 1, and works with whomever it hasn't met: with 2. */
    @Test
    void thirds_are_among_those_who_are_shared_out() {
        Problem problem = new Problem(3, 0, List.of(new BitSet()))
                .ways(/* thirds= */ true, BothNew.NEVER, 1)
                .had(Objective.THREES, 2, 1)
                .met(0, 1, 1);
        PartnerTable better = search(problem, 0, 1, 0, 0, 0, 0, 0, 0, 0, 0, 0)
                .flatMap(Exhaustive.Outcome::better)
                .orElseThrow();
        assertTrue(List.of(List.of(2, 6, 0), List.of(6, 2, 1))
                .contains(Arrays.stream(Rows.of(better, 0, 3)).boxed().toList()));
    }
}
