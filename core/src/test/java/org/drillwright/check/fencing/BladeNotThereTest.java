package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A blade is led from a contact (the flanconade: L'Abbat 1734, ch. IX; the glide: Warford 1884, p. 17) or from an arm that is
 * out, an engagement is changed for another (L'Abbat, ch. XIX-XX), a beat meets the blade where it is (Warford, p. 18), and
 * one cedes to what takes the blade (common practice, no source).
 */
class BladeNotThereTest {

    private static List<String> found(String start, String before, String leader, String follower) {
        String first = before.isEmpty() ? "" : """
                  - leader: %s
                    follower: Hold on guard.
                    distance: lunge
                """.formatted(before);
        return Judged.drill("""
                        start: Both on guard in %s, at lunge distance.
                        opening: Salute. Masks on. Both on guard in %s.
                        steps:
                        %s  - leader: %s
                            follower: %s
                            distance: lunge
                            safety: Lead the blade, do not strike it.
                        """.formatted(start, start, first, leader, follower))
                .findings("blade-not-there");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "sixte, blades apart || Bind the blade to the low outside line and lunge. | Take the touch.",
                "sixte, blades apart || Croisé to the low outside line and lunge. | Take the touch.",
                "sixte, blades apart || Press the blade. | Hold on guard.",
                "sixte, blades apart || Glide to the high outside line and lunge. | Take the touch.",
                "sixte, blades apart || Change the engagement. | Hold on guard.",
                "quarte, blades engaged || Change the engagement to quarte. | Hold on guard.",
                "quarte, blades engaged || Double change, ending in sixte. | Hold on guard.",
                "sixte, blades apart || Beat in septime. | Hold on guard.",
                "sixte, blades engaged || Beat in octave. | Hold on guard.",
                "sixte, blades apart || Thrust straight to the high inside line with a lunge. | Ceding parry of quarte.",
            })
    void nothing_is_done_to_a_blade_that_is_not_there(String start, String before, String leader, String follower) {
        assertEquals(
                1, found(start, before == null ? "" : before, leader, follower).size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "quarte, blades engaged || Bind the blade to the low outside line and lunge. | Ceding parry of quarte.",
                "quarte, blades engaged || Press the blade. | Hold on guard.",
                "quarte, blades engaged || Glide to the high inside line and lunge. | Take the touch.",
                "quarte, blades engaged || Change the engagement to sixte. | Hold on guard.",
                "quarte, blades engaged || Double change, ending in quarte. | Hold on guard.",
                "quarte, blades engaged || Change the engagement twice, ending in quarte. | Hold on guard.",
                "quarte, blades engaged || Double engagement en quarte. | Hold on guard.",
                "quarte, blades engaged || Doppio cambio di legamento in quarta. | Hold on guard.",
                "sixte, blades apart | Engage in sixte. | Change the engagement to quarte. | Hold on guard.",
                "sixte, blades apart || Beat in quarte. | Hold on guard.",
                "sixte, blades apart || Bind the blade to the low outside line. | Thrust straight to the high inside line with a lunge.",
                "sixte, blades apart || Beat the blade, then thrust to the high inside line with a lunge. | Let the blade be beaten, then parry quarte.",
            })
    void a_blade_that_is_there_is_led(String start, String before, String leader, String follower) {
        assertEquals(List.of(), found(start, before == null ? "" : before, leader, follower));
    }
}
