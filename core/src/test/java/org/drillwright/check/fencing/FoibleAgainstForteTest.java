package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.drillwright.check.Judged;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A blade is strong near the guard and weak near the point (common practice, no source), wherever it is then carried. */
class FoibleAgainstForteTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Bind the forte with your foible.                                    | 1",
                "Bind the forte with your foible to the low inside line, and lunge.  | 1",
                "Take the forte of his blade with your foible, and lunge.            | 1",
                "Bind the foible with your forte to the low inside line, and lunge.  | 0",
                "Take the foible of his blade with your forte, and lunge.            | 0"
            })
    void the_forte_takes_the_foible(String words, int found) {
        Judged drill = Judged.drill("""
                start: On guard in sixte, engaged, at lunge distance.
                steps:
                  - leader: %s
                    follower: Take the touch.
                    distance: lunge
                """.formatted(words));
        assertEquals(found, drill.findings("foible-against-forte").size());
    }
}
