package org.drillwright.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoChoiceTest {

    private static List<String> found(String level, String turn) {
        return Judged.drill("level: " + level + "\nsteps:\n  - leader: Hold.\n    follower: " + turn
                        + "\n    distance: lunge\n")
                .findings("no-choice");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "Parry quarte or sixte., or, 28",
        "Either parry or retreat., Either, 15",
        "Parry if you can., if, 21",
        "You may parry quarte., may, 19",
        "Try a parry of quarte., Try, 15",
        "Maybe parry quarte., Maybe, 15",
        "Parry when ready., when ready, 21",
        "Parez quarte ou sixte., ou, 28",
        "Parata di quarta oppure di sesta., oppure, 32"
    })
    void a_word_that_leaves_something_open_is_found(String turn, String word, int column) {
        List<String> found = found("intermediate", turn);
        assertTrue(found.contains("error 4:" + column + " '" + word + "'"), () -> "found " + found);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Parry quarte forward of the hip.",
                "Parry quarte, the hand before the shoulder.",
                "Hold the lunge for a moment.",
                "Parata di quarta e risposta.",
                "Lift the arm.",
                "The parry should be of quarte.",
                "Hold. The knee should stand over the instep."
            })
    void a_word_that_only_holds_such_letters_is_none(String turn) {
        assertEquals(List.of(), found("intermediate", turn));
    }

    @Test
    void where_turns_are_free_a_choice_is_free() {
        assertEquals(List.of(), found("training", "Parry quarte or sixte."));
        assertEquals(1, found("beginner", "Parry quarte or sixte.").size());
    }

    @Test
    void what_is_printed_and_what_is_read_are_both_looked_at() {
        assertEquals(
                List.of("error 4:38 'ou'"),
                found("intermediate", "{say: \"Parez de quarte ou\", means: \"Parry quarte.\"}"));
        assertEquals(
                1,
                found("intermediate", "{say: \"Parez.\", means: \"Parry quarte or sixte.\"}")
                        .size());
        assertEquals(
                1,
                found("intermediate", "{say: \"Parry quarte or sixte.\", means: \"Parry quarte or sixte.\"}")
                        .size());
    }
}
