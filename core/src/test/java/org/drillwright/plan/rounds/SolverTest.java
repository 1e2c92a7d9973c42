package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** How four people are served, whose three ways to pair up have gaps of 1 + 1, 2 + 2 and 3 + 3; and who is told what. */
class SolverTest {

    private static Four four(String order, int rounds) {
        return new Four(order, rounds)
                .cost(0, Objective.GAP, 1, 1)
                .cost(1, Objective.GAP, 2, 2)
                .cost(2, Objective.GAP, 3, 3);
    }

    private static CostVector repeatsAndGaps(long repeats, long sum, long widest) {
        return CostVector.of(0, repeats, 0, 0, 0, 0, sum, widest, 0, 0, 0);
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void two_rounds_without_repeat_are_found_at_once(String order) {
        Solution solution = Solver.solve(four(order, 2).problem());
        assertEquals(Method.FACTOR, solution.method());
        assertEquals(repeatsAndGaps(0, 6, 2), solution.cost());
        assertEquals(solution.cost(), solution.bound());
    }

    /** All three ways and the first once more: 2 + 4 + 6 + 2. Each round by itself would be 2; so all are looked through. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void a_fourth_round_repeats_the_cheapest_way_and_a_search_proves_it(String order) {
        Solution solution = Solver.solve(four(order, 4).problem());
        assertEquals(Method.STEPWISE, solution.method());
        assertEquals(repeatsAndGaps(2, 14, 3), solution.cost());
        assertEquals(solution.cost(), solution.bound());
    }

    /**
     * Twelve people who are kept apart but within three fours, each as above: too many to look through. Four rounds have a
     * gap of 14 for each four, and all rounds together prove it.
     */
    @Test
    void too_many_people_to_look_through_may_have_a_proof() {
        Problem problem = new Problem(12, 0, Collections.nCopies(4, new BitSet()));
        int[][] gaps = {{0, 1, 2, 3}, {1, 0, 3, 2}, {2, 3, 0, 1}, {3, 2, 1, 0}};
        for (int one = 0; one < 12; one++) {
            for (int other = one + 1; other < 12; other++) {
                if (one / 4 == other / 4) {
                    problem.cost(Objective.GAP, one, other, gaps[one % 4][other % 4]);
                } else {
                    problem.apart(one, other);
                }
            }
        }
        Solution solution = Solver.solve(problem);
        assertEquals(repeatsAndGaps(6, 42, 3), solution.cost());
        assertEquals(solution.cost(), solution.bound());
        assertEquals(Method.STEPWISE, solution.method());
    }

    /**
     * Twice two threes of which one of each may meet: no round without both of these pairs (a three by itself leaves one over;
     * Tutte 1947), so two rounds are alike, six repeats. All rounds together don't see it: in a three each may meet both others.
     */
    @Test
    void odd_numbers_who_keep_to_themselves_are_found_and_not_proved() {
        Problem problem = new Problem(12, 0, Collections.nCopies(2, new BitSet()));
        for (int one = 0; one < 12; one++) {
            for (int other = one + 1; other < 12; other++) {
                boolean bridge = one / 6 == other / 6 && one % 6 == 2 && other % 6 == 3;
                if (one / 3 != other / 3 && !bridge) {
                    problem.apart(one, other);
                }
            }
        }
        Solution solution = Solver.solve(problem);
        assertEquals(repeatsAndGaps(6, 0, 0), solution.cost());
        assertEquals(repeatsAndGaps(0, 0, 0), solution.bound());
    }

    /** 0 and 1 have met, so 2 and 3 can't work together either, and ways 1 and 2 are left: 4 + 6. They are given as lines. */
    @Test
    void rounds_that_are_given_are_told_the_bound_of_all_rounds_at_once() {
        Four four = four("012", 2);
        Problem problem = four.problem().met(0, 1, 1);
        List<Extras> least = Extras.ofAll(problem);
        Solution solution = Solver.beside(
                        problem, least, new int[][] {four.row(1), four.row(2)}, new BitSet(), Method.TWO_LINES)
                .orElseThrow();
        assertEquals(Method.TWO_LINES, solution.method());
        assertEquals(repeatsAndGaps(0, 10, 3), solution.cost());
        assertEquals(repeatsAndGaps(0, 10, 3), solution.bound());
    }

    /** The first round is given as way 1; found beside it is way 0, of 2, and then way 2, of 6. */
    @Test
    void rounds_that_are_open_are_found_beside_those_that_are_given() {
        Four four = four("012", 3);
        Problem problem = four.problem();
        BitSet open = new BitSet();
        open.set(1, 3);
        int[] nobody = {4, 4, 4, 4};
        Solution solution = Solver.beside(
                        problem,
                        Extras.ofAll(problem),
                        new int[][] {four.row(1), nobody, nobody},
                        open,
                        Method.TWO_LINES)
                .orElseThrow();
        assertEquals(repeatsAndGaps(0, 12, 3), solution.cost());
        assertEquals(four.row(0)[0], solution.table().mate(1, 0));
    }

    /** The same with nothing given: again the bound is that of all rounds at once. */
    @Test
    void the_greater_of_two_bounds_is_told() {
        Solution solution = Solver.solve(four("012", 2).problem().met(0, 1, 1));
        assertEquals(Method.FACTOR, solution.method());
        assertEquals(repeatsAndGaps(0, 10, 3), solution.bound());
    }

    @Test
    void nobody_and_no_rounds_are_served_too() {
        Solution nobody = Solver.solve(new Problem(0, 1, List.of(new BitSet())));
        assertEquals(CostVector.of(new long[Objective.COUNT]), nobody.cost());
        assertEquals(nobody.cost(), nobody.bound());
        Solution never = Solver.solve(new Problem(4, 0, List.of()));
        assertEquals(CostVector.of(new long[Objective.COUNT]), never.cost());
        assertEquals(List.of(), never.extras());
    }

    @Test
    void one_round_is_the_best_there_is() {
        Four four = four("201", 1);
        Solution solution = Solver.solve(four.problem());
        int[] row = {0, 0, 0, 0};
        for (int student = 0; student < 4; student++) {
            row[student] = solution.table().mate(0, student);
        }
        assertArrayEquals(four.row(0), row);
    }
}
