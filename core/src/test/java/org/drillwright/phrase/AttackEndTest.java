package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.IntStream;
import org.drillwright.check.Judged;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How the first stroke of a count ends, by the handbooks' tables of lines and parries (Warford 1884, p. 10-17; Britannica,
 * 11th ed., p. 593) and of measures: what is refused of an answer never makes of a stroke that arrives one that was parried.
 */
class AttackEndTest {

    @ParameterizedTest(name = "{1} | {2}")
    @CsvSource(
            delimiter = '|',
            value = {
                // Each parry closes one line; the one of the other height or side lets it pass.
                "sixte, blades apart | Lunge to the high inside line.  | Parry quarte.                    | parried",
                "sixte, blades apart | Lunge to the high inside line.  | Parry octave.                    | past.parry",
                "sixte, blades apart | Lunge to the belly.             | Parry quarte.                    | past.parry",
                "sixte, blades apart | Lunge to the high inside line.  | Retreat with a parry of octave.  | past.parry",
                // The hand that stands in sixte meets the other side only by its circle (Technical Rules t.14); not
                // said here.
                "sixte, engaged | Disengage to the high inside line with a lunge. | Parry sixte.          | unknown",
                "sixte, engaged | Disengage to the high inside line with a lunge. | Circular parry of sixte. | parried",
                "sixte, engaged | Disengage to the high inside line with a lunge. | Circular parry of octave. | unknown",
                // From a lunge away the arm alone does not reach (Warford 1884, p. 37-38).
                "sixte, engaged | Disengage to the high inside line.   | Take the touch.                  | short",
                "sixte, engaged | Disengage to the high inside line with a lunge. | Take the touch.       | received",
                "sixte, blades apart | Lunge to the high inside line.  | Retreat and take the touch.      | short",
                "sixte, blades apart | Lunge to the high inside line.  | Retreat.                         | evaded",
                "sixte, blades apart | Lunge to the high inside line.  | Hold on guard.                   | not.met",
                // One simple parry falls to a one-two (Warford 1884, p. 18-20); the touch comes on the next count.
                "sixte, engaged | One-two to the high outside line with a lunge. | Parry quarte.          | not.met"
            })
    void a_stroke_ends_as_it_must(String start, String leader, String follower, String end) {
        Count count = Judged.drill("""
                start: On guard in %s, at lunge distance.
                steps:
                  - leader: %s
                    follower: %s
                    distance: lunge
                  - leader: Recover on guard in sixte.
                    follower: Return to guard in sixte.
                    distance: lunge
                """.formatted(start, leader, follower))
                .subject()
                .replay()
                .counts()
                .get(0);
        int stroke = IntStream.range(0, count.moves().size())
                .filter(at -> count.moves().get(at).move().isAssault())
                .findFirst()
                .orElseThrow();
        assertEquals(end, AttackEnd.of(count, stroke).map(AttackEnd::key).orElse("none"));
    }
}
