package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.drillwright.check.Judged;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Remise, redoublement and reprise are further actions of who has attacked (Technical Rules t.13.1-t.13.3). */
class NothingToRenewTest {

    private static int found(String first, String leader, String follower) {
        return Judged.drill("""
                        steps:
                          - leader: %s
                            follower: Parry quarte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: %s
                            follower: %s
                            distance: extension
                            safety: Stop the point on the jacket.
                        """.formatted(first, leader, follower))
                .findings("nothing-to-renew")
                .size();
    }

    @ParameterizedTest
    @CsvSource({
        "Remise to the high inside line with a lunge., Hold the lunge., Hold on guard., 1",
        "Redouble to the high inside line with a lunge., Hold the lunge., Hold on guard., 1",
        "Reprise to the high inside line with a lunge., Hold the lunge., Hold on guard., 1",
        "Extend to the high inside line and lunge., Take the touch., Remise to the high inside line., 1",
        "Extend to the high inside line and lunge., Remise to the high outside line., Take the touch., 0",
        "Extend to the high inside line and lunge., Redouble to the low outside line., Take the touch., 0",
        "Wobble gracefully., Remise to the high outside line., Take the touch., 0",
    })
    void only_who_has_attacked_renews(String first, String leader, String follower, int times) {
        assertEquals(times, found(first, leader, follower));
    }
}
