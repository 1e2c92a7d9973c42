package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Four people, two rounds, paired in way 0 and then in way 1; the ways cost 0, 1 and 4 meetings of the past. */
class SolutionTest {

    private static Four four(String order) {
        return new Four(order, 2).cost(1, Objective.PAST, 1, 0).cost(2, Objective.PAST, 2, 2);
    }

    private static Solution solution(Four four) {
        PartnerTable table = new PartnerTable(new int[][] {four.row(0), four.row(1)});
        CostVector cost = TableCost.tally(four.problem(), table);
        return new Solution(four.problem(), table, Method.STEPWISE, Extras.ofAll(four.problem()), cost, cost);
    }

    private static Optional<CostVector> costs(long repeats, long past) {
        return Optional.of(CostVector.of(0, repeats, 0, 0, 0, 0, 0, 0, past, 0, 0));
    }

    /** In round 0 either way 1, which then comes twice, or way 2. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void whoever_is_put_together_takes_the_other_two_along(String order) {
        Four four = four(order);
        Solution solution = solution(four);
        assertEquals(costs(2, 2), solution.together(0, four.one(1), four.other(1)));
        assertEquals(costs(0, 5), solution.together(0, four.one(2), four.other(2)));
        assertEquals(costs(2, 0), solution.together(1, four.one(0), four.other(0)));
        assertEquals(costs(0, 1), solution.together(1, four.one(1), four.other(1)));
    }

    /** Without way 0 in round 0 the cheapest is way 2, since way 1 would be a repeat. */
    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void whoever_is_parted_takes_the_cheapest_other_way(String order) {
        Four four = four(order);
        Solution solution = solution(four);
        assertEquals(costs(0, 5), solution.parted(0, four.one(0), four.other(0)));
        assertEquals(costs(0, 4), solution.parted(1, four.one(1), four.other(1)));
        assertEquals(costs(0, 1), solution.parted(1, four.one(2), four.other(2)));
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.plan.rounds.Four#orders")
    void two_kept_apart_are_never_put_together(String order) {
        Four four = four(order);
        four.problem().apart(four.one(2), four.other(2));
        assertEquals(Optional.empty(), solution(four).together(0, four.one(2), four.other(2)));
        assertEquals(
                List.of(new Extras(0, 0, 0, 0), new Extras(0, 0, 0, 0)),
                solution(four).extras());
    }
}
