package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The straight thrust goes in the line of the engagement (Warford 1884, p. 17); disengage, cut-over and beat lead elsewhere
 * (p. 18-19). Under the wrist one thrusts from any engagement (L'Abbat 1734, ch. VI and VIII).
 */
class AcrossTheBladesTest {

    private static List<String> found(String guard, String blades, String stroke) {
        return Judged.drill("""
                        start: Both on guard in %s, blades %s, at lunge distance.
                        opening: Salute. Masks on. Both on guard in %s.
                        steps:
                          - leader: %s with a lunge.
                            follower: Take the touch.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                        """.formatted(guard, blades, guard, stroke)).findings("across-the-blades").stream()
                .map(one -> one.substring(0, one.indexOf(' ')))
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "sixte, engaged, Thrust straight to the high inside line, error",
        "quarte, engaged, Thrust straight to the high outside line, error",
        "sixte, engaged, Extend to the high inside line, error",
        "sixte, engaged, Thrust with opposition to the high inside line, error",
        "septime, engaged, Thrust straight to the low outside line, error",
        "sixte, engaged, Attack to the high inside line, warning",
    })
    void between_blades_that_touch_nothing_goes_straight_to_the_other_side(
            String guard, String blades, String stroke, String severity) {
        assertEquals(List.of(severity), found(guard, blades, stroke));
    }

    @ParameterizedTest
    @CsvSource({
        "sixte, engaged, Thrust straight to the high outside line",
        "sixte, engaged, Disengage to the high inside line",
        "sixte, engaged, Cut over to the high inside line",
        "sixte, engaged, Beat and thrust to the high inside line",
        "quarte, engaged, Thrust straight to the low outside line",
        "sixte, apart, Thrust straight to the high inside line",
    })
    void any_other_way_is_free(String guard, String blades, String stroke) {
        assertEquals(List.of(), found(guard, blades, stroke));
    }

    /** Between opposite hands quarte lies before sixte: what is inside for the one is outside for the other. */
    @Test
    void opposite_hands_touch_on_opposite_sides() {
        String drill = """
                hands: opposite
                start: Leader on guard in quarte, follower on guard in sixte, engaged, at lunge distance.
                opening: Salute. Masks on. Leader on guard in quarte. Follower on guard in sixte.
                steps:
                  - leader: Thrust straight to the high %s line with a lunge.
                    follower: Take the touch.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                """;
        assertEquals(
                1,
                Judged.drill(drill.formatted("inside"))
                        .findings("across-the-blades")
                        .size());
        assertEquals(List.of(), Judged.drill(drill.formatted("outside")).findings("across-the-blades"));
    }
}
