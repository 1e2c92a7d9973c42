package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.plan.roster.BothNew;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What all rounds together cost at least, counted by hand. */
class OverallTest {

    private static Problem problem(int students, int helpers, int rounds, int... novices) {
        BitSet fresh = new BitSet();
        IntStream.of(novices).forEach(fresh::set);
        return new Problem(students, helpers, Collections.nCopies(rounds, fresh));
    }

    private static CostVector row(Problem problem) {
        List<Extras> extras = Extras.ofAll(problem);
        return Overall.of(problem, extras, Bound.byRounds(problem, extras), student -> true)
                .orElseThrow();
    }

    private static Stream<Objective> aims() {
        return Stream.of(Objective.GAP, Objective.PAST, Objective.LEVEL, Objective.HANDS);
    }

    private static Problem four(Objective aim, int rounds) {
        return new Four("012", rounds)
                .cost(0, aim, 1, 1)
                .cost(1, aim, 2, 2)
                .cost(2, aim, 3, 3)
                .problem();
    }

    /** Two rounds: each has two partners, at least for 1 + 2; that is 12 seen from both sides. */
    @ParameterizedTest
    @MethodSource("aims")
    void without_repeats_each_has_its_cheapest_partners(Objective aim) {
        assertEquals(6, row(four(aim, 2)).of(aim));
    }

    /** Four rounds: all three ways for 2 + 4 + 6, and the cheapest once more for 2; two pairs repeat. */
    @ParameterizedTest
    @MethodSource("aims")
    void with_the_fewest_repeats_the_cheapest_meet_again(Objective aim) {
        assertEquals(2, row(four(aim, 4)).of(Objective.REPEATS));
        assertEquals(14, row(four(aim, 4)).of(aim));
        assertEquals(aim == Objective.GAP ? 3 : 0, row(four(aim, 4)).of(Objective.WIDEST));
    }

    /** 0 and 1 have met, so way 0 would be a repeat: ways 1 and 2, for 4 + 6. */
    @Test
    void a_partner_of_earlier_today_is_none_of_the_cheapest() {
        assertEquals(10, row(four(Objective.GAP, 2).met(0, 1, 1)).of(Objective.GAP));
    }

    /** 0 and 1 are new, 2 and 3 know it; all pairs with 2 cost 5. In two rounds each new one meets both for 5 + 0. */
    @Test
    void who_is_new_in_all_rounds_has_only_those_who_know_it() {
        Problem problem = problem(4, 0, 2, 0, 1);
        problem.cost(Objective.PAST, 0, 2, 5).cost(Objective.PAST, 1, 2, 5);
        assertEquals(10, row(problem).of(Objective.PAST));
    }

    /** 0 may only work with 1, so both rounds are alike: two repeats. */
    @Test
    void whose_only_partner_it_is_repeats_and_so_do_the_others() {
        assertEquals(2, row(problem(4, 0, 2).apart(0, 2).apart(0, 3)).of(Objective.REPEATS));
    }

    /**
     * Three people, four rounds: 01, 02, 12 and one of them again, so two turns with the helper go to one, one to each of the
     * others: 0 + 0 + 0 + 1. Who had two before gets one of them at least, for 2: 2 + 0 + 0 + 1.
     */
    @ParameterizedTest(name = "{0} helpers: {1}, with two turns before {2}")
    @CsvSource({"0, 1, 3", "1, 1, 3"})
    void turns_are_dealt_beside_the_fewest_repeats(int helpers, int even, int before) {
        Objective kind = helpers > 0 ? Objective.TURNS : Objective.BLANKS;
        assertEquals(1, row(problem(3, helpers, 4)).of(Objective.REPEATS));
        assertEquals(even, row(problem(3, helpers, 4)).of(kind));
        assertEquals(before, row(problem(3, helpers, 4).had(kind, 0, 2)).of(kind));
    }

    /**
     * Three who may be thirds, one round: the middle meets both others. Of the gaps 4, 5 and 6 those of 4 and 5 are the least
     * two with one in the middle: 9. A round by itself says so too; three rounds have each in the middle once, 2 * (4 + 5 + 6).
     */
    @Test
    void the_middle_of_a_three_meets_two() {
        Problem once = gaps(problem(3, 0, 1));
        assertEquals(9, row(once).of(Objective.GAP));
        Problem thrice = gaps(problem(3, 0, 3));
        assertEquals(3, row(thrice).of(Objective.REPEATS));
        assertEquals(30, row(thrice).of(Objective.GAP));
    }

    private static Problem gaps(Problem problem) {
        return problem.cost(Objective.GAP, 0, 1, 4)
                .cost(Objective.GAP, 0, 2, 5)
                .cost(Objective.GAP, 1, 2, 6)
                .ways(/* thirds= */ true, BothNew.NEVER, 1);
    }

    /** Half a repeat is a whole one, and behind it nothing is known of pairs: five who may only meet in a ring, three rounds. */
    @Test
    void behind_half_a_number_nothing_is_said() {
        Problem problem = problem(5, 1, 3);
        for (int one = 0; one < 5; one++) {
            for (int other = one + 1; other < 5; other++) {
                if (other - one != 1 && other - one != 4) {
                    problem.apart(one, other);
                }
                problem.cost(Objective.PAST, one, other, 1);
            }
        }
        // 15 turns, 3 of them with the helper: 6 pairs, and the ring has 5.
        assertEquals(1, row(problem).of(Objective.REPEATS));
        assertEquals(6, row(problem).of(Objective.PAST));
    }

    @Test
    void nobody_and_no_rounds_have_no_row() {
        assertEquals(
                List.of(),
                Overall.of(problem(0, 0, 1), List.of(Extras.NONE), row(problem(2, 0, 1)), one -> true).stream()
                        .toList());
        assertEquals(
                List.of(),
                Overall.of(problem(2, 0, 0), List.of(), row(problem(2, 0, 1)), one -> true).stream()
                        .toList());
    }
}
