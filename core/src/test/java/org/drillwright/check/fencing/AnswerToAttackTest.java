package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each attack is met: parried, evaded (a retreat only if the measure after it is above 0), or received on purpose. To hold
 * under an attack counts as received, with a warning to say so. Stepping in, extending or engaging is no answer.
 */
class AnswerToAttackTest {

    private static List<String> found(String distance, String attack, String answer) {
        return Judged.drill("""
                start: On guard in sixte, blades apart, at %s distance.
                steps:
                  - leader: %s
                    follower: %s
                    distance: %s
                    safety: Arrive softly and let the blade bend.
                """.formatted(distance, attack, answer, distance)).findings("answer-to-attack").stream()
                .map(one -> one.substring(0, one.indexOf(' ')))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "Parry quarte.",
        "Parry quarte with a retreat.",
        "Retreat.",
        "Take the touch.",
        "Receive the touch.",
        "Let it arrive."
    })
    void an_attack_that_is_met(String answer) {
        assertEquals(List.of(), found("lunge", "Extend to the high inside line and lunge.", answer), answer);
    }

    @ParameterizedTest
    @CsvSource({"Hold on guard.", "Hold."})
    void to_hold_counts_as_received_but_should_be_said(String answer) {
        assertEquals(List.of("warning"), found("lunge", "Extend to the high inside line and lunge.", answer), answer);
    }

    @ParameterizedTest
    @CsvSource({"Advance.", "Engage in quarte.", "Lower the point."})
    void what_is_no_answer(String answer) {
        assertEquals(List.of("error"), found("lunge", "Extend to the high inside line and lunge.", answer), answer);
    }

    /** After a lunge from extension distance the measure is -1; one step back leads to 0, where the point still arrives. */
    @Test
    void one_step_back_is_not_enough_from_too_near() {
        assertEquals(List.of("error"), found("extension", "Extend to the high inside line and lunge.", "Retreat."));
        assertEquals(List.of(), found("extension", "Extend to the high inside line and lunge.", "Two retreats."));
    }

    @Test
    void a_feint_needs_no_answer() {
        assertEquals(List.of(), found("lunge", "Feint to the high inside line.", "Hold on guard."));
    }

    /** Whose own attack was just parried holds and takes the riposte: that is received on purpose, and said by 'hold'. */
    @Test
    void who_was_parried_may_hold() {
        assertEquals(List.of(), Judged.drill("""
                steps:
                  - leader: Extend to the high inside line and lunge.
                    follower: Parry quarte.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                  - leader: Hold the lunge.
                    follower: Riposte straight to the high inside line.
                    distance: extension
                    safety: Stop the point on the jacket.
                """).findings("answer-to-attack"));
    }
}
