package org.drillwright.plan.walk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.plan.rounds.Problem;
import org.drillwright.plan.walk.Posting.Posted;
import org.junit.jupiter.api.Test;

/**
 * Who takes which part. In two lines of two, 0 and 1 stay, 2 and 3 move: first 0 faces 2 and 1 faces 3, then 0 faces 3 and 1
 * faces 2.
 */
class PostingTest {

    private static final LinePosts TWO = new LinePosts(List.of(0, 1), List.of(2, 3));

    private static Problem problem(int students, int helpers, int rounds, int... novices) {
        BitSet bits = new BitSet();
        IntStream.of(novices).forEach(bits::set);
        return new Problem(students, helpers, Collections.nCopies(rounds, bits));
    }

    private static void allCost(Problem problem, Objective aim, int cost) {
        for (int one = 0; one < problem.students(); one++) {
            for (int other = one + 1; other < problem.students(); other++) {
                problem.cost(aim, one, other, cost);
            }
        }
    }

    private static Posted improved(Problem problem, LinePosts lines) {
        return Posting.improved(problem, List.of(Forming.of(0, problem.rounds(), lines)));
    }

    private static int facing(Posted posted, int round, int student) {
        return posted.formings().stream()
                .filter(forming -> forming.holds(round))
                .findFirst()
                .orElseThrow()
                .facing(round, student);
    }

    private static long of(Posted posted, Objective aim) {
        return posted.cost().get(2 + aim.rank());
    }

    @Test
    void the_second_line_moves_one_post_up() {
        Forming forming = Forming.of(0, 2, TWO);
        assertEquals(List.of(2, 3), List.of(forming.facing(0, 0), forming.facing(0, 1)));
        assertEquals(List.of(3, 2), List.of(forming.facing(1, 0), forming.facing(1, 1)));
        assertEquals(List.of(0, 1), List.of(forming.post(1, 0), forming.post(1, 2)));
        assertEquals(List.of(2, 3), forming.next());
    }

    /** 0 and 2 face each other at first; with 0 and 1 exchanged they don't. */
    @Test
    void two_kept_apart_are_parted_by_one_exchange() {
        Posted posted = improved(problem(4, 0, 1).apart(0, 2), TWO);
        assertTrue(posted.isPermitted());
        assertFalse(facing(posted, 0, 0) == 2);
    }

    /** Whoever is exchanged, 0 meets two of the others. */
    @Test
    void what_cannot_be_parted_is_not_permitted() {
        assertFalse(improved(problem(4, 0, 2).apart(0, 1).apart(0, 2).apart(0, 3), TWO)
                .isPermitted());
    }

    /** Lines 0 1 and 2 3 make 0-2, 0-3, 1-2 and 1-3, all dear; with 1 and 2 exchanged only 0-3 and 1-2 are. */
    @Test
    void whoever_is_new_stays() {
        Problem problem = problem(4, 0, 2, 0);
        allCost(problem, Objective.PAST, 1);
        problem.cost(Objective.PAST, 0, 1, 0).cost(Objective.PAST, 2, 3, 0);
        Posted posted = improved(problem, TWO);
        assertEquals(2, posted.cost().get(posted.cost().size() - 1) >> (2 * Meetings.ROOM));
        assertTrue(posted.formings().get(0).stays().contains(0));
    }

    /** 1 has had a turn with the helper, 3; at first it would have another. */
    @Test
    void the_helper_takes_who_had_fewer_turns() {
        Posted posted =
                improved(problem(3, 1, 1).had(Objective.TURNS, 1, 1), new LinePosts(List.of(0, 1), List.of(2, 3)));
        assertEquals(0, of(posted, Objective.TURNS));
    }

    /** Two who are new and one who knows it: at first 1 is alone. */
    @Test
    void the_gap_faces_who_stood_alone_less_often() {
        Posted posted = improved(
                problem(3, 0, 1, 0, 1).had(Objective.BLANKS, 1, 1), new LinePosts(List.of(0, 1), List.of(2, 3)));
        assertEquals(3, facing(posted, 0, 0));
        assertEquals(0, of(posted, Objective.BLANKS));
    }

    /** 0 and 2 are apart; whoever is with the helper then has had five turns. */
    @Test
    void what_may_not_be_weighs_more_than_any_number_of_turns() {
        Problem problem =
                problem(3, 1, 1).apart(0, 2).had(Objective.TURNS, 0, 5).had(Objective.TURNS, 2, 5);
        Posted posted = improved(problem, new LinePosts(List.of(0, 1), List.of(2, 3)));
        assertTrue(posted.isPermitted());
        assertEquals(5, of(posted, Objective.TURNS));
    }

    /** With 1 and 2 exchanged the lines would make 0-1 and 2-3, of equal level; but 0 and 1 met earlier today. */
    @Test
    void levels_do_not_buy_a_meeting_of_earlier_today() {
        Problem problem = problem(4, 0, 2);
        allCost(problem, Objective.LEVEL, 1);
        problem.cost(Objective.LEVEL, 0, 1, 0).cost(Objective.LEVEL, 2, 3, 0).met(0, 1, 1);
        Posted posted = improved(problem, TWO);
        assertEquals(0, posted.repeats());
    }

    /**
     * Two formings of one round each of four: the second can do without a repeat in two ways, in one of which two people
     * change line and in the other nobody does.
     */
    @Test
    void of_two_ways_without_repeat_nobody_changes_line() {
        Problem problem = problem(4, 0, 2);
        Posted posted = Posting.improved(problem, List.of(Forming.of(0, 1, TWO), Forming.of(1, 2, TWO)));
        assertEquals(0, posted.repeats());
        assertEquals(0, posted.cost().get(3));
    }

    /** Two formings of two rounds of four: lines 0 1 and 2 3 have met all across, so two meet again or somebody changes. */
    @Test
    void people_change_line_rather_than_meet_again() {
        Problem problem = problem(4, 0, 3);
        Posted posted = Posting.improved(problem, List.of(Forming.of(0, 2, TWO), Forming.of(2, 3, TWO)));
        assertEquals(0, posted.repeats());
        assertEquals(2, posted.cost().get(3));
    }
}
