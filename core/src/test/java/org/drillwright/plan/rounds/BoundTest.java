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

/** What no table can be below as each round by itself and each one's partners tell it, aim by aim, counted by hand. */
class BoundTest {

    private static Problem problem(int students, int helpers, int rounds, int... novices) {
        return new Problem(students, helpers, Collections.nCopies(rounds, set(novices)));
    }

    private static BitSet set(int... novices) {
        BitSet bits = new BitSet();
        IntStream.of(novices).forEach(bits::set);
        return bits;
    }

    private static long bound(Problem problem, Objective aim) {
        return Bound.byRounds(problem, Extras.ofAll(problem)).of(aim);
    }

    @Test
    void no_rounds_cost_nothing() {
        assertEquals(CostVector.of(new long[Objective.COUNT]), Bound.of(problem(3, 0, 0), List.of()));
    }

    /** Four people have three others each: from the fourth round on each meets one once more, two pairs in all. */
    @ParameterizedTest(name = "four people, {0} rounds: {1} repeats")
    @CsvSource({"1,0", "3,0", "4,2", "5,4", "6,6", "7,10"})
    void whoever_has_met_all_must_repeat(int rounds, int repeats) {
        assertEquals(repeats, bound(problem(4, 0, rounds), Objective.REPEATS));
    }

    /** 0 may only work with 1, so its second round costs 1; half a pair is a whole pair. */
    @Test
    void half_a_repeat_is_a_whole_one() {
        assertEquals(1, bound(problem(4, 0, 2).apart(0, 2).apart(0, 3), Objective.REPEATS));
    }

    /** Two people who met twice before: their next rounds cost 2 and 3. */
    @Test
    void meetings_of_earlier_today_count() {
        assertEquals(5, bound(problem(2, 0, 2).met(0, 1, 2), Objective.REPEATS));
    }

    /** Two are new, two know it. In three rounds each of the new ones meets one of the two once more. */
    @Test
    void who_is_new_in_all_rounds_has_only_those_who_know_it() {
        assertEquals(2, bound(problem(4, 0, 3, 0, 1), Objective.REPEATS));
    }

    /**
     * Three people make three pairs, one a round; in four rounds one pair repeats. Of the six meetings that cost 1, seen from
     * both sides, four may be turns of the one left over: 2 sides are 1 pair.
     */
    @ParameterizedTest(name = "{0} helpers")
    @CsvSource({"0", "1"})
    void a_turn_with_the_helper_or_alone_saves_the_dearest_meeting(int helpers) {
        assertEquals(1, bound(problem(3, helpers, 4), Objective.REPEATS));
    }

    /** Four turns for three: 0, 0, 0 and 1. Who had two more than the others comes last: 0, 0, 1 and 1. */
    @Test
    void turns_are_dealt_out_evenly() {
        assertEquals(1, bound(problem(3, 1, 4), Objective.TURNS));
        assertEquals(2, bound(problem(3, 1, 4).had(Objective.TURNS, 0, 2), Objective.TURNS));
        assertEquals(0, bound(problem(3, 0, 4), Objective.TURNS));
    }

    @Test
    void turns_alone_are_dealt_out_evenly() {
        assertEquals(1, bound(problem(3, 0, 4), Objective.BLANKS));
        assertEquals(2, bound(problem(3, 0, 4).had(Objective.BLANKS, 1, 2), Objective.BLANKS));
        assertEquals(0, bound(problem(3, 1, 4), Objective.BLANKS));
    }

    /** One is new, two know it: anyone may be the one left over. */
    @Test
    void where_few_are_new_all_may_be_left_over() {
        assertEquals(1, bound(problem(3, 0, 4, 0), Objective.BLANKS));
    }

    /** Three are new, one knows it: two of the three stand alone a round, four turns in two rounds. */
    @Test
    void where_most_are_new_only_they_stand_alone() {
        assertEquals(1, bound(problem(4, 0, 2, 0, 1, 2), Objective.BLANKS));
    }

    /** Five are new, one knows it and one helps: three stand alone, six turns for five. */
    @Test
    void a_helper_counts_among_those_who_know_it() {
        assertEquals(1, bound(problem(6, 1, 2, 0, 1, 2, 3, 4), Objective.BLANKS));
    }

    /** Three are new to the first drill, nobody to the second: in the second nobody stands alone. */
    @Test
    void only_rounds_in_which_the_new_ones_are_left_single_them_out() {
        Problem mixed = new Problem(4, 0, List.of(set(0, 1, 2), set()));
        assertEquals(0, bound(mixed, Objective.BLANKS));
    }

    /** Four rounds: repeats can't be avoided, so each round may be that of gaps 1 + 1. */
    @ParameterizedTest
    @MethodSource("aims")
    void with_repeats_each_round_may_be_the_cheapest(Objective aim) {
        Problem problem = new Four("012", 4)
                .cost(0, aim, 1, 1)
                .cost(1, aim, 2, 2)
                .cost(2, aim, 3, 3)
                .problem();
        assertEquals(8, bound(problem, aim));
        assertEquals(aim == Objective.GAP ? 1 : 0, bound(problem, Objective.WIDEST));
    }

    private static Stream<Objective> aims() {
        return Stream.of(Objective.GAP, Objective.PAST, Objective.LEVEL, Objective.HANDS);
    }

    /**
     * In two of five rounds 0 and 1 are new and can't work together, so those cost 1 + 1; the other three cost nothing.
     * With five rounds repeats can't be avoided.
     */
    @Test
    void rounds_with_the_same_novices_cost_the_same() {
        BitSet fresh = set(0, 1);
        Problem problem = new Problem(4, 0, List.of(set(), fresh, set(), set(), fresh));
        problem.cost(Objective.LEVEL, 0, 2, 1).cost(Objective.LEVEL, 1, 3, 1);
        problem.cost(Objective.LEVEL, 0, 3, 2).cost(Objective.LEVEL, 1, 2, 2);
        assertEquals(4, bound(problem, Objective.LEVEL));
    }

    /**
     * In two rounds 0 and 1 are new. Then the largest gap is 4 at least, so the other rounds may have it too: with 6 = 4 + 2
     * and nothing from the past, rather than 3 + 3 and two meetings.
     */
    @Test
    void a_gap_that_one_round_must_have_frees_the_others() {
        BitSet fresh = set(0, 1);
        Problem problem = new Problem(4, 0, List.of(set(), fresh, set(), set(), fresh));
        problem.cost(Objective.GAP, 0, 1, 3).cost(Objective.GAP, 2, 3, 3);
        problem.cost(Objective.PAST, 0, 1, 1).cost(Objective.PAST, 2, 3, 1);
        problem.cost(Objective.GAP, 0, 2, 4).cost(Objective.GAP, 1, 3, 2);
        problem.cost(Objective.GAP, 0, 3, 9).cost(Objective.GAP, 1, 2, 9);
        assertEquals(4, bound(problem, Objective.WIDEST));
        assertEquals(30, bound(problem, Objective.GAP));
        assertEquals(0, bound(problem, Objective.PAST));
    }

    /** A round that one student passes alone costs what the other two cost. */
    @Test
    void who_stands_alone_or_is_helped_has_no_gap() {
        Problem problem = problem(3, 0, 1)
                .cost(Objective.GAP, 0, 1, 4)
                .cost(Objective.GAP, 0, 2, 5)
                .cost(Objective.GAP, 1, 2, 6);
        assertEquals(4, bound(problem, Objective.GAP));
        assertEquals(4, bound(problem, Objective.WIDEST));
    }

    /**
     * Six are new and one knows the drill, who takes two of them: in each round the four others are two pairs of two who are
     * new. In three rounds that is twelve turns among six, two each, of which the second costs 1.
     */
    @Test
    void who_knows_the_drill_is_in_one_group_only() {
        Problem problem = new Problem(7, 0, Collections.nCopies(3, set(0, 1, 2, 3, 4, 5)))
                .ways(/* thirds= */ true, BothNew.WANTED, 1);
        List<Extras> extras = Extras.ofAll(problem);
        assertEquals(new Extras(0, 1, 2, 0), extras.get(0));
        assertEquals(6, Bound.byRounds(problem, extras).of(Objective.WATCHED));
    }
}
