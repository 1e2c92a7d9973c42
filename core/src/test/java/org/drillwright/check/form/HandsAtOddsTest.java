package org.drillwright.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;

class HandsAtOddsTest {

    private static List<String> found(String lines) {
        return Judged.drill(lines).findings("hands-at-odds");
    }

    @Test
    void a_left_hander_in_the_start_of_a_drill_for_like_hands_is_found() {
        assertEquals(
                List.of("error 1:8 'The leader is left-handed'"),
                found("start: The leader is left-handed, on guard in sixte, blades apart, at lunge distance."));
    }

    @Test
    void two_right_handers_in_a_drill_for_opposite_hands_are_found() {
        assertEquals(List.of("error 2:8 'Both right-handed'"), found("""
                hands: opposite
                start: Both right-handed, on guard in sixte, blades apart, at lunge distance.
                """));
    }

    @Test
    void what_agrees_is_left_alone() {
        assertEquals(List.of(), found("""
                hands: opposite
                start: Right-hander against left-hander, on guard in sixte, blades apart, at lunge distance.
                """));
        assertEquals(List.of(), found("start: Both right-handed, on guard in sixte, blades apart, at lunge distance."));
    }

    @Test
    void hands_that_are_not_told_of_are_left_alone() {
        assertEquals(List.of(), found("start: On guard in sixte, blades apart, at lunge distance."));
    }
}
