package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.drillwright.check.Judged;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The attack begins with the arm (Technical Rules t.9.1, t.83.2; Waite 1880, p. 23-24: the front foot does not land before the
 * blade). A thrust from a lunge that was attacked from is another one.
 */
class FootBeforeHandTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Lunge. | Hold on guard. | Extend to the high inside line. | Parry quarte. | 1",
                "Lunge. | Hold on guard. | Thrust to the high inside line. | Take the touch. | 1",
                "Extend to the high inside line. | Hold on guard. | Lunge. | Parry quarte. | 0",
                "Extend to the high inside line and lunge. | Parry quarte. | Thrust to the low outside line. | Parry octave. | 0",
                "Lunge and extend to the high inside line. | Parry quarte. | Thrust to the low outside line. | Parry octave. | 0",
                "Lunge. | Hold on guard. | Recover on guard in sixte. | Hold on guard. | 0",
                "Lunge gracefully with wobbling. | Hold on guard. | Extend to the high inside line. | Parry quarte. | 0",
            })
    void the_arm_never_comes_on_a_count_behind_the_foot(
            String first, String answer, String second, String reply, int times) {
        String drill = """
                steps:
                  - leader: %s
                    follower: %s
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                  - leader: %s
                    follower: %s
                    distance: extension
                    safety: Stop the point on the jacket.
                """.formatted(first, answer, second, reply);
        assertEquals(times, Judged.drill(drill).findings("foot-before-hand").size());
    }
}
