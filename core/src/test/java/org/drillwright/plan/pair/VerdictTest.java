package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.drillwright.plan.rounds.CostVector;
import org.drillwright.plan.rounds.Objective;
import org.junit.jupiter.api.Test;

/** What is said of a plan: proved best where it costs no more than the bound, else how much it may miss in what. */
class VerdictTest {

    private static final CostVector BOUND = CostVector.of(0, 0, 0, 0, 1, 0, 0, 0, 2, 0, 0);

    @Test
    void a_plan_that_costs_what_the_bound_says_is_proved_best() {
        Verdict verdict = new Verdict(BOUND, BOUND, false, false);
        assertTrue(verdict.isProvedBest());
        assertEquals(Optional.empty(), verdict.open());
        assertEquals(0, verdict.above());
        assertEquals("Proved best.", verdict.sentence().english());
    }

    @Test
    void a_plan_with_more_repeats_says_how_many_it_may_miss() {
        Verdict verdict = new Verdict(CostVector.of(0, 3, 0, 0, 1, 0, 0, 0, 0, 0, 0), BOUND, false, false);
        assertFalse(verdict.isProvedBest());
        assertEquals(Optional.of(Objective.REPEATS), verdict.open());
        assertEquals(3, verdict.above());
        assertEquals(
                "In repeats today another plan could be better by 3 at most.",
                verdict.sentence().english());
    }

    @Test
    void what_is_more_important_and_equal_is_proved() {
        Verdict verdict = new Verdict(CostVector.of(0, 0, 0, 0, 1, 0, 0, 0, 7, 0, 0), BOUND, false, false);
        assertEquals(
                "Proved best in everything more important than repeats of past classes; in that, another plan could be"
                        + " better by 5 at most.",
                verdict.sentence().english());
    }

    @Test
    void of_two_lines_it_is_said_if_no_others_are_better() {
        Verdict verdict = new Verdict(CostVector.of(0, 0, 0, 0, 1, 0, 0, 0, 7, 0, 0), BOUND, false, true);
        assertEquals(
                "Proved best in everything more important than repeats of past classes; in that, another plan could be"
                        + " better by 5 at most; of two lines in which everybody may work with everybody opposite, none"
                        + " are better.",
                verdict.sentence().english());
    }
}
