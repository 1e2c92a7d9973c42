package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.Collections;
import org.junit.jupiter.api.Test;

/**
 * Five rounds of three students, the helper, 3, and nobody, 4. 0 and 1 met once before, 2 had one turn with the helper.
 *
 * <pre>
 * round  pair  repeat gap past level hands   left over
 *   0    0-1     1     2   3     0     1     2 with the helper: 1
 *   1    0-1     2     2   3     0     1     2 alone: 0
 *   2    1-2     0     5   1     2     0     0 with the helper: 0
 *   3    0-1     3     2   3     0     1     2 alone: 1
 *   4    0-1     4     2   3     0     1     2 with the helper: 2
 * </pre>
 */
class TableCostTest {

    private final Problem problem = new Problem(3, 1, Collections.nCopies(5, new BitSet()))
            .met(0, 1, 1)
            .had(Objective.TURNS, 2, 1)
            .cost(Objective.GAP, 0, 1, 2)
            .cost(Objective.GAP, 1, 2, 5)
            .cost(Objective.PAST, 0, 1, 3)
            .cost(Objective.PAST, 1, 2, 1)
            .cost(Objective.LEVEL, 1, 2, 2)
            .cost(Objective.HANDS, 0, 1, 1);

    private final PartnerTable table =
            new PartnerTable(new int[][] {{1, 0, 3}, {1, 0, 4}, {3, 2, 1}, {1, 0, 4}, {1, 0, 3}});

    private long cost(TableCost reckoning, Objective aim, int student, int mate) {
        long[] costs = new long[Objective.COUNT];
        reckoning.cost(0, student, mate, costs);
        return costs[aim.rank()];
    }

    @Test
    void a_table_costs_what_its_rounds_add_up_to() {
        assertEquals(CostVector.of(0, 10, 3, 0, 1, 0, 13, 5, 13, 2, 4), TableCost.tally(problem, table));
    }

    @Test
    void the_first_rounds_cost_what_they_would_without_the_others() {
        assertArrayEquals(new long[] {0, 3, 1, 0, 0, 0, 4, 2, 6, 0, 2}, TableCost.costs(problem, table, 2));
    }

    @Test
    void without_the_first_round_the_others_count() {
        TableCost others = TableCost.without(problem, table, 0, 4);
        assertEquals(3, cost(others, Objective.REPEATS, 0, 1));
        assertEquals(3, cost(others, Objective.REPEATS, 1, 0));
        assertEquals(1, cost(others, Objective.REPEATS, 2, 1));
        assertEquals(1, cost(others, Objective.TURNS, 2, 3));
        assertEquals(1, cost(others, Objective.TURNS, 0, 3));
        assertEquals(2, cost(others, Objective.BLANKS, 2, 4));
    }

    @Test
    void before_any_round_only_what_was_before_counts() {
        TableCost before = new TableCost(problem.had(Objective.BLANKS, 1, 7));
        assertEquals(1, cost(before, Objective.REPEATS, 1, 0));
        assertEquals(1, cost(before, Objective.TURNS, 2, 3));
        assertEquals(7, cost(before, Objective.BLANKS, 1, 4));
    }

    @Test
    void an_empty_table_pairs_nobody() {
        PartnerTable empty = PartnerTable.empty(problem);
        assertEquals(4, empty.mate(0, 0));
        assertEquals(4, empty.mate(4, 2));
    }
}
