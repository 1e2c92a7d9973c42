package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;

/** A parry in another line is an error, unless words that were not read may send the attack into that line. */
class ParryMissesTest {

    private static List<String> severities(String attack) {
        return Judged.drill("""
                steps:
                  - leader: %s
                    follower: Parry octave.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                """.formatted(attack)).findings("parry-misses").stream()
                .map(one -> one.substring(0, one.indexOf(' ')))
                .toList();
    }

    @Test
    void a_parry_in_another_line_is_refused() {
        assertEquals(List.of("error"), severities("Thrust to the high inside line with a lunge."));
    }

    @Test
    void beside_words_that_were_not_read_it_is_a_warning() {
        assertEquals(
                List.of("warning"),
                severities("Thrust to the high inside line with a lunge, and xyzzy the plugh frobnicately."));
    }
}
