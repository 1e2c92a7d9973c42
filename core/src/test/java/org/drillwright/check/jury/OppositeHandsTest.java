package org.drillwright.check.jury;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;

/**
 * What a drill for same hands becomes when a left-hander meets a right-hander: the same contact lies inside for one and outside
 * for the other (L'Abbat XXII), so a disengage comes out on the other side.
 */
class OppositeHandsTest {

    private static final String DISENGAGE = """
            start: On guard in sixte, blades engaged, at lunge distance.
            steps:
              - leader: Disengage to the high inside line and lunge.
                follower: Parry quarte.
                distance: lunge
                safety: Arrive softly and let the blade bend.
              - leader: Recover on guard in sixte, engaged.
                follower: Return to guard in sixte, engaged.
                distance: lunge
            """;

    private static List<String> notes(String lines) {
        return OppositeHands.notes(Judged.drill(lines).subject()).stream()
                .map(note -> note.severity().word() + " " + note.what().english())
                .toList();
    }

    @Test
    void a_disengage_comes_out_on_the_other_side() {
        assertEquals(
                List.of(
                        "note Against an opposite hand: A disengage from the high inside line ends in the high outside line,"
                                + " not in the high inside line."),
                notes(DISENGAGE));
    }

    @Test
    void what_holds_for_both_and_what_is_a_fault_already_is_not_noted() {
        assertEquals(List.of(), notes("""
                steps:
                  - leader: Extend to the high inside line and lunge.
                    follower: Parry quarte.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                  - leader: Recover on guard in sixte.
                    follower: Return to guard in sixte.
                    distance: lunge
                """));
        assertEquals(
                List.of(), notes("steps:\n  - leader: Advance.\n    follower: Parry quarte.\n    distance: lunge\n"));
    }

    @Test
    void a_drill_that_is_written_for_opposite_hands_or_for_nobody_opposite_has_no_notes() {
        assertEquals(List.of(), notes("hands: opposite\n" + DISENGAGE));
        assertEquals(List.of(), notes("form: solo\n" + DISENGAGE));
    }
}
