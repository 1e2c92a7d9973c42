package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class DrillWriterTest {

    /** The look of a written file; the text is of invented words. */
    private static final String WHOLE = """
            title: "Quarte: the parry"
            level: intermediate
            form: partner
            weapon: foil
            hands: opposite
            works-on:
              - line
            needs:
              - straight-thrust
            gear:
              - mask
              - "no: gloves # today"
            purpose: "-"
            start: On guard.
            opening: "\\"Salute\\""
            steps:
              - number: 1
                call: Hop!
                leader:
                  say: Allez.
                  means: Advance.
                follower: Hold.
                distance: lunge
                safety: Slowly.
                note: Once.
              - {}
            closing: Salute.
            repeat: 6
            swap: true
            tempo: 1.5
            note: "Two\\nlines"
            cautions:
              - Masks.
            variant-of: another
            tags:
              - new
            revised: 2026-09-01
            accept:
              not-back-at-start: It goes on.
            """;

    @Test
    void a_written_drill_looks_like_one_from_the_guide() {
        assertEquals(WHOLE, DrillWriter.write(Files.drill(WHOLE)));
    }

    @Test
    void what_is_absent_leaves_no_line() {
        String text = """
                title: A
                level: beginner
                form: solo
                weapon: none
                hands: same
                steps: []
                repeat: 1
                swap: false
                """;
        assertEquals(text, DrillWriter.write(Files.drill(text)));
    }
}
