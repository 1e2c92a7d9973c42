package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Three students, 0 to 2, and two helpers, 3 and 4. In the first round 0 and 1 are new, in the second nobody is. */
class ProblemTest {

    private final Problem problem = new Problem(3, 2, List.of(BitSet.valueOf(new long[] {0b011}), new BitSet()));

    @ParameterizedTest(name = "round {0}: {1} with {2}: {3}")
    @CsvSource({
        "0,0,1,false",
        "1,0,1,true",
        "0,0,2,true",
        "0,2,1,true",
        "0,0,0,false",
        "1,2,2,false",
        "0,0,3,true",
        "0,4,1,true",
        "0,3,4,false",
        "1,4,3,false"
    })
    void two_who_are_new_two_who_help_and_one_alone_are_no_pair(int round, int one, int other, boolean permitted) {
        assertEquals(permitted, problem.permits(round, one, other));
    }

    @Test
    void two_kept_apart_are_no_pair_in_any_round_whichever_is_named_first() {
        problem.apart(2, 0).apart(1, 4);
        assertFalse(problem.permits(0, 0, 2));
        assertFalse(problem.permits(1, 2, 0));
        assertFalse(problem.permits(1, 1, 4));
        assertFalse(problem.permits(1, 4, 1));
        assertTrue(problem.permits(1, 1, 2));
    }

    @Test
    void what_was_before_is_kept_for_each() {
        problem.met(0, 2, 3)
                .had(Objective.TURNS, 1, 4)
                .had(Objective.BLANKS, 2, 5)
                .cost(Objective.PAST, 1, 2, 6);
        assertEquals(
                List.of(3, 3, 0), List.of(problem.metBefore(0, 2), problem.metBefore(2, 0), problem.metBefore(0, 1)));
        assertEquals(
                List.of(0, 4), List.of(problem.hadBefore(Objective.TURNS, 0), problem.hadBefore(Objective.TURNS, 1)));
        assertEquals(
                List.of(0, 5), List.of(problem.hadBefore(Objective.BLANKS, 1), problem.hadBefore(Objective.BLANKS, 2)));
        assertEquals(
                List.of(6L, 6L, 0L),
                List.of(
                        problem.cost(Objective.PAST, 1, 2),
                        problem.cost(Objective.PAST, 2, 1),
                        problem.cost(Objective.LEVEL, 1, 2)));
    }

    @Test
    void the_blank_comes_after_students_and_helpers() {
        assertEquals(
                List.of(3, 2, 2, 5), List.of(problem.students(), problem.helpers(), problem.rounds(), problem.blank()));
        assertTrue(problem.isStudent(2));
        assertFalse(problem.isStudent(3));
    }

    @Test
    void rounds_with_other_novices_are_not_alike() {
        assertFalse(problem.isUniform());
        assertTrue(new Problem(2, 0, List.of(new BitSet(), new BitSet())).isUniform());
    }
}
