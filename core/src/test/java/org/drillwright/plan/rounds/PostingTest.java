package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.Collections;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Who takes which post. In two lines of two, posts 0 and 1 stand, 2 and 3 step: first 0 faces 2 and 1 faces 3, then 0
 * faces 3 and 1 faces 2.
 */
class PostingTest {

    private static final Tally NOTHING = Tally.of(new long[Aim.COUNT]);

    private static Problem problem(int students, int helpers, int rounds, int... novices) {
        BitSet bits = new BitSet();
        IntStream.of(novices).forEach(bits::set);
        return new Problem(students, helpers, Collections.nCopies(rounds, bits));
    }

    private static void allCost(Problem problem, Aim aim, int cost) {
        for (int one = 0; one < problem.students(); one++) {
            for (int other = one + 1; other < problem.students(); other++) {
                problem.cost(aim, one, other, cost);
            }
        }
    }

    private static Posting improved(Problem problem, Formation formation) {
        return new Posting(problem, formation).improved(NOTHING);
    }

    private static String mates(Posting posting, int students, int round) {
        Table table = posting.table();
        return IntStream.range(0, students)
                .mapToObj(student -> Integer.toString(table.mate(round, student)))
                .collect(Collectors.joining(" "));
    }

    private static String places(Posting posting, int students, int round) {
        return IntStream.range(0, students)
                .mapToObj(student -> Integer.toString(posting.place(round, student)))
                .collect(Collectors.joining(" "));
    }

    /** 1 and 3 are new and stand, 0 and 2 step. */
    @Test
    void at_first_the_new_ones_stand_and_the_others_step_in_the_order_of_the_roster() {
        Posting posting = new Posting(problem(4, 0, 2, 1, 3), new TwoLines(2));
        assertEquals("1 0 3 2", mates(posting, 4, 0));
        assertEquals("3 2 1 0", mates(posting, 4, 1));
        assertEquals("0 0 1 1", places(posting, 4, 0));
        assertEquals("1 0 0 1", places(posting, 4, 1));
        assertTrue(posting.isPermitted());
    }

    /** Three students and the second line's end: helper 3. Five places for four: the gap is the blank, 4. */
    @Test
    void helpers_come_after_the_students_and_gaps_last() {
        assertEquals("2 3 0", mates(new Posting(problem(3, 1, 1), new TwoLines(2)), 3, 0));
        assertEquals("3 4 4", mates(new Posting(problem(3, 1, 1, 0, 1, 2), new BlankRing(3, 1)), 3, 0));
    }

    /** 0 and 2 face each other at first. 0 and 1 change: 1 faces 2 and 0 faces 3. */
    @Test
    void two_kept_apart_are_parted_by_one_exchange() {
        Problem problem = problem(4, 0, 1).apart(0, 2);
        assertFalse(new Posting(problem, new TwoLines(2)).isPermitted());
        Posting posting = improved(problem, new TwoLines(2));
        assertTrue(posting.isPermitted());
        assertEquals("3 2 1 0", mates(posting, 4, 0));
        assertEquals("1 0 0 1", places(posting, 4, 0));
    }

    /** All four may only be in one line each; whoever is exchanged, 0 meets two of the others. */
    @Test
    void what_cannot_be_parted_is_not_permitted() {
        Problem problem = problem(4, 0, 2).apart(0, 1).apart(0, 2).apart(0, 3);
        assertFalse(improved(problem, new TwoLines(2)).isPermitted());
    }

    /** The pair apart is that of the second round, 1 and 2. */
    @Test
    void the_last_round_counts_like_the_first() {
        Problem problem = problem(4, 0, 2).apart(1, 2);
        assertFalse(new Posting(problem, new TwoLines(2)).isPermitted());
        assertTrue(improved(problem, new TwoLines(2)).isPermitted());
    }

    /** Lines 0 1 and 2 3 make 0-2, 0-3, 1-2 and 1-3, all dear; with 1 and 2 exchanged only 0-3 and 1-2 are. */
    @Test
    void whoever_is_new_stands_even_if_stepping_would_be_as_good_and_found_sooner() {
        Problem problem = problem(4, 0, 2, 0);
        allCost(problem, Aim.PAST, 1);
        problem.cost(Aim.PAST, 0, 1, 0).cost(Aim.PAST, 2, 3, 0);
        Posting posting = improved(problem, new TwoLines(2));
        assertEquals("1 0 3 2", mates(posting, 4, 0));
        assertEquals("3 2 1 0", mates(posting, 4, 1));
        assertEquals("0 0 1 1", places(posting, 4, 0));
        assertEquals("0 1 1 0", places(posting, 4, 1));
    }

    /** The same with the new one last in the roster: 3 stands, and 0 beside it. 3-0 and 1-2 cost nothing. */
    @Test
    void whoever_is_new_stands_though_last_in_the_roster() {
        Problem problem = problem(4, 0, 2, 3);
        allCost(problem, Aim.PAST, 1);
        problem.cost(Aim.PAST, 0, 3, 0).cost(Aim.PAST, 1, 2, 0);
        Posting posting = improved(problem, new TwoLines(2));
        assertEquals(2, Reckoning.tally(problem, posting.table()).of(Aim.PAST));
        assertEquals(posting.place(0, 3), posting.place(1, 3));
    }

    /** Nothing is gained by any exchange, so nobody moves; the bound 0 is never reached. */
    @Test
    void where_nothing_helps_the_order_of_the_roster_stays() {
        Problem problem = problem(6, 0, 1);
        allCost(problem, Aim.PAST, 1);
        assertEquals("3 4 5 0 1 2", mates(improved(problem, new TwoLines(3)), 6, 0));
    }

    /** 1 has had a turn with the helper, 3; at first it would have another. */
    @Test
    void the_helper_takes_who_had_fewer_turns() {
        Problem problem = problem(3, 1, 1).had(Aim.TURNS, 1, 1);
        assertEquals("3 2 1", mates(improved(problem, new TwoLines(2)), 3, 0));
    }

    /** Two who are new and one who knows it: at first 1 stands alone. */
    @Test
    void the_gap_faces_who_stood_alone_less_often() {
        Problem problem = problem(3, 0, 1, 0, 1).had(Aim.BLANKS, 1, 1);
        assertEquals("3 2 1", mates(improved(problem, new BlankRing(2, 1)), 3, 0));
    }

    /** 0 and 2 are apart; whoever is with the helper then has had five turns. */
    @Test
    void what_may_not_be_weighs_more_than_any_number_of_turns() {
        Problem problem = problem(3, 1, 1).apart(0, 2).had(Aim.TURNS, 0, 5).had(Aim.TURNS, 2, 5);
        Posting posting = improved(problem, new TwoLines(2));
        assertTrue(posting.isPermitted());
        assertEquals(5, Reckoning.tally(problem, posting.table()).of(Aim.TURNS));
    }

    /** Gaps 6 and 0, or 3 and 3 and two meetings in the past: the largest gap goes before the past. */
    @Test
    void an_equal_sum_of_gaps_does_not_buy_a_larger_gap() {
        Problem problem = problem(4, 0, 1)
                .cost(Aim.GAP, 0, 2, 3)
                .cost(Aim.GAP, 1, 3, 3)
                .cost(Aim.PAST, 0, 2, 1)
                .cost(Aim.PAST, 1, 3, 1)
                .cost(Aim.GAP, 0, 3, 6)
                .cost(Aim.GAP, 0, 1, 6);
        assertEquals("2 3 0 1", mates(improved(problem, new TwoLines(2)), 4, 0));
    }

    /** The other way round: the largest gap is brought down, whatever the past. */
    @Test
    void a_smaller_largest_gap_is_worth_two_meetings_of_the_past() {
        Problem problem = problem(4, 0, 1)
                .cost(Aim.GAP, 0, 2, 6)
                .cost(Aim.GAP, 0, 3, 3)
                .cost(Aim.GAP, 1, 2, 3)
                .cost(Aim.PAST, 0, 3, 1)
                .cost(Aim.PAST, 1, 2, 1)
                .cost(Aim.GAP, 0, 1, 9);
        assertEquals("3 2 1 0", mates(improved(problem, new TwoLines(2)), 4, 0));
    }

    /**
     * 2 and 5 have a gap of 6 and are kept from all others. For the other four 3 + 3 costs two meetings of the past and 6 +
     * 0 none: the largest gap is 6 anyway, so the past decides.
     */
    @Test
    void the_largest_gap_is_that_of_the_whole_table() {
        Problem problem = problem(6, 0, 1)
                .cost(Aim.GAP, 2, 5, 6)
                .cost(Aim.GAP, 0, 3, 3)
                .cost(Aim.GAP, 1, 4, 3)
                .cost(Aim.PAST, 0, 3, 1)
                .cost(Aim.PAST, 1, 4, 1)
                .cost(Aim.GAP, 0, 4, 6)
                .cost(Aim.GAP, 0, 1, 9);
        for (int one : new int[] {0, 1, 3, 4}) {
            problem.apart(2, one).apart(5, one);
        }
        assertEquals("4 3 5 1 0 2", mates(improved(problem, new TwoLines(3)), 6, 0));
    }

    /**
     * Only 0-1, 0-2, 1-2, 1-3, 3-5 and 4-5 cost nothing. 4 has nobody but 5, so 3 has nobody but 1, and 0 and 2 are left. One
     * walk through all exchanges does not get there; a second does.
     */
    @Test
    void exchanges_go_on_until_none_helps() {
        Problem problem = problem(6, 0, 1);
        int[][] past = {
            {0, 3, 2}, {0, 4, 2}, {0, 5, 3}, {1, 4, 2}, {1, 5, 2}, {2, 3, 1}, {2, 4, 2}, {2, 5, 2}, {3, 4, 1}
        };
        for (int[] pair : past) {
            problem.cost(Aim.PAST, pair[0], pair[1], pair[2]);
        }
        assertEquals("2 3 0 1 5 4", mates(improved(problem, new TwoLines(3)), 6, 0));
    }

    /** With 1 and 2 exchanged the lines would make 0-1 and 2-3, without gaps; but 0 and 1 met earlier today. */
    @Test
    void smaller_gaps_do_not_buy_a_meeting_of_earlier_today() {
        Problem problem = problem(4, 0, 2);
        allCost(problem, Aim.GAP, 1);
        problem.cost(Aim.GAP, 0, 1, 0).cost(Aim.GAP, 2, 3, 0).met(0, 1, 1);
        Posting posting = improved(problem, new TwoLines(2));
        assertEquals("2 3 0 1", mates(posting, 4, 0));
        assertEquals("3 2 1 0", mates(posting, 4, 1));
    }
}
