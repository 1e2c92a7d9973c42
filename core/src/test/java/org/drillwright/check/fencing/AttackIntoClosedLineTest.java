package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A bent arm held in a position closes that position's one line, the other three are open; a blade that has been parried
 * closes nothing until its owner moves it; an extended arm closes a line only when opposition is said.
 */
class AttackIntoClosedLineTest {

    private static final String CLOSED = "error";

    private static List<String> found(String guard, String line) {
        return severities("""
                start: Both on guard in %s, blades apart, at lunge distance.
                opening: Salute. Masks on. Both on guard in %s.
                steps:
                  - leader: Thrust straight to the %s line with a lunge.
                    follower: Take the touch.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                """.formatted(guard, guard, line));
    }

    private static List<String> severities(String lines) {
        return Judged.drill(lines).findings("attack-into-closed-line").stream()
                .map(one -> one.substring(0, one.indexOf(' ')))
                .toList();
    }

    /** Each position closes one line (core/docs/parries.md), from the one attacked. */
    @ParameterizedTest
    @CsvSource({"quarte, high inside", "sixte, high outside", "septime, low inside", "octave, low outside"})
    void a_guard_closes_its_own_line_and_no_other(String guard, String closed) {
        for (String line : List.of("high inside", "high outside", "low inside", "low outside")) {
            assertEquals(line.equals(closed) ? List.of(CLOSED) : List.of(), found(guard, line), guard + ", " + line);
        }
    }

    @Test
    void a_direct_riposte_is_open_in_the_line_of_the_parry() {
        String drill = """
                steps:
                  - leader: Extend to the high inside line and lunge.
                    follower: Parry quarte.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                  - leader: %s
                    follower: Riposte straight to the high %s line.
                    distance: extension
                    safety: Stop the point on the jacket.
                """;
        assertEquals(List.of(), severities(drill.formatted("Take the touch.", "inside")));
        // Back on guard in sixte first, the leader's blade closes the high outside line again.
        String recovered = drill.replace("""
                  - leader: %s
                """, """
                  - leader: Recover on guard in sixte.
                    follower: Hold on guard.
                    distance: extension to lunge
                  - leader: %s
                """);
        assertEquals(
                List.of(CLOSED),
                severities(recovered
                        .formatted("Take the touch.", "outside")
                        .replace("high outside line.", "high outside line with a lunge.")));
    }

    /** An attack that goes round the blade ends where the blade does not stand. */
    @Test
    void a_disengage_from_a_closed_line_goes_to_an_open_one() {
        assertEquals(List.of(), severities("""
                start: Both on guard in sixte, blades engaged, at lunge distance.
                steps:
                  - leader: Disengage to the high inside line and lunge.
                    follower: Parry quarte.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                """));
    }
}
