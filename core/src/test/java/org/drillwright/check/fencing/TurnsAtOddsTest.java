package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.drillwright.check.Judged;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Between two of one hand blades touch inside for both, outside for both, or not at all (L'Abbat 1734, ch. XXII). */
class TurnsAtOddsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Come on guard in sixte, engaged. | Come on guard in sixte, blades apart. | 1",
                "Return to guard in sixte, blades apart. | Return to guard in sixte, engaged. | 1",
                "Come on guard in quarte, engaged. | Come on guard in sixte, engaged. | 1",
                "Come on guard in sixte, engaged. | Come on guard in sixte, engaged. | 0",
                "Come on guard in sixte, blades apart. | Come on guard in quarte, blades apart. | 0",
                "Come on guard in sixte, engaged. | Come on guard in sixte. | 0",
            })
    void both_turns_say_the_same_of_the_blades(String leader, String follower, int times) {
        String drill = """
                steps:
                  - leader: %s
                    follower: %s
                    distance: lunge
                """.formatted(leader, follower);
        assertEquals(times, Judged.drill(drill).findings("turns-at-odds").size());
    }
}
