package org.drillwright.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where the words on the card can be read, they name the same positions, lines and steps as the words that are judged. */
class SayUnlikeMeansTest {

    private static List<String> found(String form, String key, String say, String means) {
        return Judged.drill("""
                form: %s
                steps:
                  - %s: {say: "%s", means: "%s"}
                    distance: lunge
                """.formatted(form, key, say, means)).findings("say-unlike-means");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Parez sixte                                        | Parry quarte
            Thrust to the low inside line                      | Thrust to the high inside line
            Thrust to the high outside line                    | Thrust to the high inside line
            Extend and lunge to the low inside line            | Extend and lunge to the high inside line
            Retreat                                            | Advance
            On guard in quarte                                 | On guard in sixte
            Recover on guard in quarte                         | Recover on guard in sixte
            Hand to quarte                                     | Hand to sixte
            """)
    void another_position_line_or_step_is_found(String say, String means) {
        assertEquals(1, found("partner", "leader", say, means).size(), say);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Parez quarte              | Parry quarte
            Parry                     | Parry quarte
            Thrust                    | Thrust to the high inside line
            Thrust high               | Thrust to the high inside line
            Thrust inside             | Thrust to the high inside line
            Gently now                | Parry quarte
            Xyzzy sixte               | Parry quarte
            Parry sixte               | Xyzzy quarte plugh
            """)
    void less_or_what_cannot_be_read_is_no_contradiction(String say, String means) {
        assertEquals(List.of(), found("partner", "leader", say, means));
    }

    /** In a solo drill the leader's words are a call: 'say' is what is called out, and may be any word. */
    @Test
    void a_call_is_not_compared_but_what_the_class_does_is() {
        assertEquals(List.of(), found("solo", "leader", "Retreat", "Advance"));
        assertEquals(1, found("solo", "follower", "Retreat", "Advance").size());
    }
}
