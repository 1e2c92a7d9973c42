package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.drillwright.plan.roster.BothNew;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** All rounds at once, for classes whose best table can be seen. */
class FactorTest {

    private static Problem problem(int students, int helpers, int rounds, int... novices) {
        BitSet bits = new BitSet();
        IntStream.of(novices).forEach(bits::set);
        return new Problem(students, helpers, Collections.nCopies(rounds, bits));
    }

    private static Optional<Factor.Outcome> solve(Problem problem) {
        List<Extras> extras = Extras.ofAll(problem);
        return Factor.solve(problem, extras, Bound.of(problem, extras));
    }

    private static CostVector bound(Problem problem) {
        return solve(problem).orElseThrow().bound();
    }

    private static PartnerTable table(Problem problem) {
        List<int[]> rounds = solve(problem).orElseThrow().begun();
        assertEquals(problem.rounds(), rounds.size(), "no split");
        return new PartnerTable(rounds.toArray(int[][]::new));
    }

    private static CostVector tally(Objective aim, long cost) {
        long[] costs = new long[Objective.COUNT];
        costs[aim.rank()] = cost;
        return CostVector.of(costs);
    }

    private static Set<List<Integer>> rows(PartnerTable table, int rounds, int students) {
        Set<List<Integer>> rows = new HashSet<>();
        for (int round = 0; round < rounds; round++) {
            rows.add(IntStream.of(Rows.of(table, round, students)).boxed().toList());
        }
        return rows;
    }

    private static Set<List<Integer>> rows(Four four, int... parts) {
        Set<List<Integer>> rows = new HashSet<>();
        for (int part : parts) {
            rows.add(IntStream.of(four.row(part)).boxed().toList());
        }
        return rows;
    }

    /** Of 1 + 1, 2 + 2 and 3 + 4 the two cheapest ways. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void two_rounds_of_four_are_the_two_cheapest_ways(String order) {
        Four four = new Four(order, 2)
                .cost(0, Objective.PAST, 1, 1)
                .cost(1, Objective.PAST, 2, 2)
                .cost(2, Objective.PAST, 3, 4);
        assertEquals(tally(Objective.PAST, 6), bound(four.problem()));
        assertEquals(rows(four, 0, 1), rows(table(four.problem()), 2, 4));
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void pairs_of_earlier_today_are_not_used(String order) {
        Four four = new Four(order, 2)
                .met(0, 1)
                .cost(0, Objective.LEVEL, 1, 1)
                .cost(1, Objective.LEVEL, 2, 2)
                .cost(2, Objective.LEVEL, 3, 4);
        assertEquals(tally(Objective.LEVEL, 11), bound(four.problem()));
        assertEquals(rows(four, 1, 2), rows(table(four.problem()), 2, 4));
    }

    /** Three and the helper, 3: in three rounds all ways. 0 had two turns more than the others; this one costs 2. */
    @Test
    void the_helper_is_met_like_anyone_else() {
        Problem problem = problem(3, 1, 3).had(Objective.TURNS, 0, 2);
        assertEquals(tally(Objective.TURNS, 2), bound(problem));
        assertEquals(Set.of(List.of(1, 0, 3), List.of(2, 3, 0), List.of(3, 2, 1)), rows(table(problem), 3, 3));
    }

    /** Two who are new work with helper 2 and helper 3 in turn; the helpers never work together. */
    @Test
    void two_who_are_new_change_between_two_helpers() {
        assertEquals(Set.of(List.of(2, 3), List.of(3, 2)), rows(table(problem(2, 2, 2, 0, 1)), 2, 2));
    }

    @Test
    void it_does_not_serve_where_somebody_stands_alone_the_drill_changes_or_nothing_is_to_do() {
        BitSet fresh = BitSet.valueOf(new long[] {0b0011});
        assertTrue(solve(problem(3, 0, 1)).isEmpty());
        assertTrue(solve(new Problem(4, 0, List.of(fresh, new BitSet()))).isEmpty());
        assertTrue(solve(problem(4, 0, 0)).isEmpty());
        assertTrue(solve(problem(0, 0, 2)).isEmpty());
    }

    @Test
    void it_does_not_serve_where_somebody_must_repeat() {
        assertTrue(solve(problem(4, 0, 4)).isEmpty());
        assertTrue(solve(problem(4, 0, 3, 0, 1)).isEmpty());
        assertTrue(solve(problem(4, 0, 3)).isPresent());
    }

    /** 5 + 0 and 2 + 3 are the same sum of gaps. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void of_equal_sums_of_gaps_the_one_with_the_smaller_largest_is_taken(String order) {
        Four four = new Four(order, 1)
                .cost(0, Objective.GAP, 5, 0)
                .cost(1, Objective.GAP, 2, 3)
                .cost(2, Objective.GAP, 9, 9);
        assertEquals(CostVector.of(0, 0, 0, 0, 0, 0, 5, 3, 0, 0, 0), bound(four.problem()));
        assertEquals(rows(four, 1), rows(table(four.problem()), 1, 4));
    }

    /** 5 + 0 is less than 3 + 3. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void a_smaller_largest_gap_does_not_buy_a_larger_sum(String order) {
        Four four = new Four(order, 1)
                .cost(0, Objective.GAP, 5, 0)
                .cost(1, Objective.GAP, 3, 3)
                .cost(2, Objective.GAP, 9, 9);
        assertEquals(CostVector.of(0, 0, 0, 0, 0, 0, 5, 5, 0, 0, 0), bound(four.problem()));
        assertEquals(rows(four, 0), rows(table(four.problem()), 1, 4));
    }

    /** One meeting of the past goes before eight hands, over both rounds. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void the_more_important_aim_decides_over_all_rounds_together(String order) {
        Four four = new Four(order, 2)
                .cost(0, Objective.HANDS, 2, 2)
                .cost(1, Objective.HANDS, 2, 2)
                .cost(2, Objective.PAST, 1, 0);
        assertEquals(tally(Objective.HANDS, 8), bound(four.problem()));
    }

    /**
     * Two pairs: a hand counts 1, a gap 1 + 2 * 1 = 3, so the dearest pair 3 * gap + 1, which may be 10^9 and no more. Beyond
     * that hands are looked at by themselves; both pairs must have one.
     */
    @ParameterizedTest(name = "a gap of {0}")
    @CsvSource({"333333333", "333333334"})
    void an_aim_without_room_beside_the_others_is_looked_at_behind_them(int gap) {
        Four four = new Four("012", 1);
        for (int part = 0; part < 3; part++) {
            four.cost(part, Objective.GAP, gap, 0).cost(part, Objective.HANDS, 1, 1);
        }
        assertEquals(CostVector.of(0, 0, 0, 0, 0, 0, gap, gap, 0, 0, 2), bound(four.problem()));
    }

    /** A gap that finds no room even alone: of it and of what stands behind it nothing is known. */
    @Test
    void what_finds_no_room_at_all_has_no_bound() {
        Four four = new Four("012", 1);
        for (int part = 0; part < 3; part++) {
            four.cost(part, Objective.GAP, 1_000_000_001, 0).cost(part, Objective.HANDS, 1, 1);
        }
        assertEquals(CostVector.of(new long[Objective.COUNT]), bound(four.problem()));
    }

    /** Two triangles, of which each pair costs nothing; all pairs across cost 1. */
    private static Problem triangles(int... names) {
        Problem problem = problem(6, 0, 2);
        for (int one = 0; one < 3; one++) {
            for (int other = 3; other < 6; other++) {
                problem.cost(Objective.PAST, names[one], names[other], 1);
            }
        }
        return problem;
    }

    /** A triangle can't be paired up; so no table reaches the bound, and not even a round is found this way. */
    @Test
    void a_factor_that_does_not_split_is_a_bound_all_the_same() {
        Factor.Outcome outcome = solve(triangles(0, 1, 2, 3, 4, 5)).orElseThrow();
        assertEquals(tally(Objective.PAST, 0), outcome.bound());
        assertEquals(0, outcome.begun().size());
    }

    /**
     * Five who know it, two rounds without a helper: four in pairs, and one joins one of them, in each round another. Whoever
     * works with 4 costs 1, and somebody does in both rounds: 2.
     */
    @Test
    void thirds_join_the_cheapest_pairs() {
        Problem problem = problem(5, 0, 2).ways(/* thirds= */ true, BothNew.NEVER, 1);
        for (int other = 0; other < 4; other++) {
            problem.cost(Objective.PAST, other, 4, 1);
        }
        List<Extras> extras = Extras.ofAll(problem);
        CostVector bound = Bound.of(problem, extras);
        List<int[]> begun = Factor.withThirds(problem, extras, bound);
        assertEquals(2, begun.size());
        for (int[] row : begun) {
            List<Integer> thirds = Arrays.stream(row)
                    .filter(mate -> mate > problem.blank())
                    .boxed()
                    .toList();
            assertEquals(1, thirds.size());
            int middle = problem.joined(thirds.get(0));
            assertEquals(middle, row[row[middle]], "the one in the middle has a partner");
        }
        CostVector cost = TableCost.tally(problem, new PartnerTable(begun.toArray(int[][]::new)));
        assertEquals(0, cost.of(Objective.THREES));
        assertEquals(2, cost.of(Objective.PAST));
    }

    /**
     * With 0-3 and 1-4 for nothing too there is a ring of six, 2-0-3-5-4-1-2, as cheap as the two triangles, and it splits:
     * 2-0, 3-5, 4-1, and 0-3, 5-4, 1-2. Whatever the people are called, it is found.
     */
    @ParameterizedTest
    @CsvSource({
        "0,1,2,3,4,5",
        "1,2,0,4,5,3",
        "2,0,1,5,3,4",
        "3,4,5,0,1,2",
        "0,2,1,3,5,4",
        "5,4,3,2,1,0",
        "0,2,4,1,3,5",
        "1,3,5,0,2,4",
        "0,1,5,2,3,4",
        "4,0,3,5,1,2",
        "2,5,0,3,1,4",
        "3,0,4,1,5,2"
    })
    void of_equal_factors_one_that_splits_is_found(int a, int b, int c, int d, int e, int f) {
        Problem problem =
                triangles(a, b, c, d, e, f).cost(Objective.PAST, a, d, 0).cost(Objective.PAST, b, e, 0);
        int[] first = new int[6];
        int[] second = new int[6];
        pair(first, c, a, d, f, e, b);
        pair(second, a, d, f, e, b, c);
        assertEquals(
                Set.of(
                        IntStream.of(first).boxed().toList(),
                        IntStream.of(second).boxed().toList()),
                rows(table(problem), 2, 6));
    }

    private static void pair(int[] row, int... pairs) {
        for (int at = 0; at < pairs.length; at += 2) {
            row[pairs[at]] = pairs[at + 1];
            row[pairs[at + 1]] = pairs[at];
        }
    }

    /** Keeps apart the last pairs until as many are left. */
    private static void leave(int pairs, Problem problem) {
        int left = problem.students() * (problem.students() - 1) / 2;
        for (int one = problem.students() - 1; one >= 0; one--) {
            for (int other = 0; other < one && left > pairs; other++) {
                if (other != one - 1) {
                    problem.apart(one, other);
                    left--;
                }
            }
        }
        assertEquals(pairs, left);
    }

    /**
     * 40 people in one round, two vertices for each pair and one for each person: 730 pairs make 1500. The first four can be
     * paired with gaps 5 + 0 or 2 + 3; all others go without.
     */
    @ParameterizedTest(name = "{0} pairs, order {3}")
    @CsvSource({"730,5,3,012", "730,5,3,102", "731,5,0,012", "731,5,0,102"})
    void beyond_1500_vertices_the_largest_gap_is_not_brought_down(int pairs, int sum, int widest, String order) {
        Problem problem = problem(40, 0, 1);
        int[][] ways = order.equals("012")
                ? new int[][] {{0, 1, 2, 3}, {0, 2, 1, 3}}
                : new int[][] {{0, 2, 1, 3}, {0, 1, 2, 3}};
        for (int one = 0; one < 40; one++) {
            for (int other = one + 1; other < 40; other++) {
                problem.cost(Objective.GAP, one, other, one < 4 ? 9 : 0);
            }
        }
        problem.cost(Objective.GAP, ways[0][0], ways[0][1], 5).cost(Objective.GAP, ways[0][2], ways[0][3], 0);
        problem.cost(Objective.GAP, ways[1][0], ways[1][1], 2).cost(Objective.GAP, ways[1][2], ways[1][3], 3);
        leave(pairs, problem);
        assertEquals(CostVector.of(0, 0, 0, 0, 0, 0, sum, widest, 0, 0, 0), bound(problem));
    }

    /** All pairs have a gap of 1, so nothing can be narrower: with 1500 vertices that is known, with more it isn't. */
    @ParameterizedTest(name = "{0} pairs")
    @CsvSource({"730,1", "731,0"})
    void up_to_1500_vertices_the_largest_gap_is_known(int pairs, int widest) {
        Problem problem = problem(40, 0, 1);
        for (int one = 0; one < 40; one++) {
            for (int other = one + 1; other < 40; other++) {
                problem.cost(Objective.GAP, one, other, 1);
            }
        }
        leave(pairs, problem);
        assertEquals(CostVector.of(0, 0, 0, 0, 0, 0, 20, widest, 0, 0, 0), bound(problem));
    }

    /** 40 people are 20 pairs; each has met once. Without gaps nothing stands before the past. */
    @Test
    void in_a_large_class_without_gaps_the_past_has_a_bound() {
        Problem problem = problem(40, 0, 1);
        for (int one = 0; one < 40; one++) {
            for (int other = one + 1; other < 40; other++) {
                problem.cost(Objective.PAST, one, other, 1);
            }
        }
        assertEquals(tally(Objective.PAST, 20), bound(problem));
    }

    /** 78 people, one round: 78 + 2 * 2961 = 6000. 64 people, 31 rounds: 64 * 31 + 2 * 2009 = 6002. */
    @ParameterizedTest(name = "{0} people, {1} rounds, {2} pairs: {3}")
    @CsvSource({"78,1,2961,true", "78,1,2962,false", "64,31,2009,false", "76,2,2850,true"})
    void a_class_too_large_to_wait_for_is_not_solved(int students, int rounds, int pairs, boolean solved) {
        Problem problem = problem(students, 0, rounds);
        leave(pairs, problem);
        assertEquals(solved, solve(problem).isPresent());
    }
}
