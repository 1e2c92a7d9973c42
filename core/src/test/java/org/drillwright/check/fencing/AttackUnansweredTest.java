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
class AttackUnansweredTest {

    private static List<String> found(String distance, String attack, String answer) {
        return Judged.drill("""
                start: On guard in sixte, blades apart, at %s distance.
                steps:
                  - leader: %s
                    follower: %s
                    distance: %s
                    safety: Arrive softly and let the blade bend.
                """.formatted(distance, attack, answer, distance)).findings("attack-unanswered").stream()
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

    /** Who lets his blade go lets in what comes along it, and no other stroke: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"Glide to the shoulder with a lunge., warning", "Disengage to the high inside line with a lunge., error"
    })
    void to_yield_the_blade_lets_in_what_comes_along_it(String attack, String severity) {
        assertEquals(List.of(severity), severities("""
                start: On guard in sixte, engaged, at lunge distance.
                weapon: epee
                steps:
                  - leader: %s
                    follower: Yield the blade.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                """.formatted(attack)));
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

    private static List<String> severities(String lines) {
        return Judged.drill(lines).findings("attack-unanswered").stream()
                .map(one -> one.substring(0, one.indexOf(' ')))
                .toList();
    }

    /** A touch that does not come cannot be taken: common practice, no source. */
    @Test
    void nobody_takes_a_touch_that_does_not_come() {
        String drill = """
                steps:
                  - leader: %s
                    follower: Take the touch.
                    distance: lunge
                    safety: Stop the point on the jacket.
                """;
        assertEquals(List.of("error"), severities(drill.formatted("Hold on guard.")));
        assertEquals(List.of("error"), severities(drill.formatted("Advance.")));
        assertEquals(List.of(), severities(drill.formatted("Extend to the high inside line and lunge.")));
        assertEquals(List.of(), severities(drill.formatted("Wobble gracefully.")));
    }

    /** Who is hit in an attack acknowledges it, on the same count or when the attack is over (Waite 1880, p. 91). */
    @Test
    void a_stop_hit_is_taken_on_the_same_count_or_on_the_next() {
        String drill = """
                weapon: epee
                steps:
                  - leader: Lunge to the low outside line%s.
                    follower: Stop hit to the arm.
                    distance: lunge
                    safety: Stop the point on the sleeve.
                  - leader: %s
                    follower: Hold on guard.
                    distance: extension to lunge
                """;
        assertEquals(List.of(), severities(drill.formatted(" and take the touch", "Recover on guard in sixte.")));
        assertEquals(List.of(), severities(drill.formatted("", "Take the touch.")));
        assertEquals(List.of("warning"), severities(drill.formatted("", "Recover on guard in sixte.")));
        assertEquals(
                List.of(),
                Judged.drill(drill.formatted(" and take the touch", "Recover on guard in sixte."))
                        .findings("too-much-in-a-count"));
    }

    /** Who is hit acknowledges it (Waite 1880, p. 91); to hold, in the lunge or on guard, says nothing of it. */
    @Test
    void who_only_holds_under_a_riposte_is_asked_whether_it_is_taken() {
        String drill = """
                steps:
                  - leader: Extend to the high inside line and lunge.
                    follower: Parry quarte.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                  - leader: %s
                    follower: Riposte straight to the high inside line with a lunge.
                    distance: lunge
                    safety: Stop the point on the jacket.
                """;
        assertEquals(List.of("warning"), severities(drill.formatted("Hold the lunge.")));
        assertEquals(List.of(), severities(drill.formatted("Hold the lunge and take the touch.")));
        String recovers = drill.replace("""
                  - leader: %s
                """, """
                  - leader: Recover on guard in sixte.
                    follower: Hold on guard.
                    distance: extension to lunge
                  - leader: %s
                """);
        assertEquals(List.of("warning"), severities(recovers.formatted("Hold on guard.")));
        assertEquals(List.of(), severities(recovers.formatted("Hold on guard and take the touch.")));
    }
}
