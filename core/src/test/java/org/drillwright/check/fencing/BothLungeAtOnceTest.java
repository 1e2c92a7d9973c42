package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.drillwright.check.Judged;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A caution that both lunge is known in every language that drills are written in; one that forbids it is none. Common practice, no source. */
class BothLungeAtOnceTest {

    private static int found(String caution) {
        return Judged.drill("""
                        level: training
                        cautions: ["%s"]
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Lunge to the high inside line and take the touch.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                        """.formatted(caution))
                .findings("both-lunge-at-once")
                .size();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Because both lunge, keep the points low.       | 0
            They lunge together: meet softly.              | 0
            Tous deux se fendent : pointes basses.         | 0
            Attention, les deux se fendent en même temps.  | 0
            Affondano entrambi; le punte restano basse.    | 0
            Poiché affondano insieme, punte basse.         | 0
            Ambos van a fondo a la vez; puntas bajas.      | 0
            Como los dos tiran a fondo, puntas bajas.      | 0
            Hier fallen beide aus, die Spitzen bleiben tief. | 0
            Weil beide gleichzeitig ausfallen, Vorsicht.   | 0
            Never let both lunge.                          | 1
            Lunge softly, and watch out for both walls.    | 1
            Ne vous fendez jamais ensemble.                | 1
            Non affondate mai insieme.                     | 1
            No vayan nunca a fondo juntos.                 | 1
            Nie gleichzeitig ausfallen.                    | 1
            """)
    void a_caution_says_it(String caution, int times) {
        assertEquals(times, found(caution));
    }
}
