package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.drillwright.check.Judged;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Without a weapon there is no blade to work with; a bare arm and the feet may be drilled: common practice, no source. */
class NoBladeInHandTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "partner | Engage in sixte. | 1",
                "partner | Thrust to the high inside line with a lunge. | 1",
                "partner | Extend to the high inside line. | 1",
                "partner | Advance. | 0",
                "solo | Put the point of the blade on the target. | 1",
                "solo | Extend the arm. | 0",
                "solo | Lunge. | 0",
            })
    void blade_work_needs_a_weapon(String form, String turn, int times) {
        String drill = """
                form: %s
                weapon: none
                gear: []
                start: On guard, at lunge distance.
                opening: Salute. On guard.
                steps:
                  - leader: %s
                    follower: %s
                    distance: lunge
                closing: Salute.
                """.formatted(
                form, form.equals("solo") ? "Call \"Now\"." : turn, form.equals("solo") ? turn : "Hold on guard.");
        assertEquals(times, Judged.drill(drill).findings("no-blade-in-hand").size());
    }
}
