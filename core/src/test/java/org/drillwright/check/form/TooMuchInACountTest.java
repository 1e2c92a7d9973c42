package org.drillwright.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is joined to an action belongs to it: extend and lunge, advance and lunge, beat and thrust. */
class TooMuchInACountTest {

    private static List<String> found(String turns, String turn) {
        return Judged.in(
                        "levels: [{name: l, turns: " + turns + ", blades: free}]",
                        "level: l\nsteps:\n  - leader: Hold.\n    follower: \"" + turn + "\"\n    distance: lunge\n")
                .findings("too-much-in-a-count");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Advance.",
                "Hold.",
                "Parry quarte.",
                "Straight thrust to the high inside line.",
                "Recover on guard in sixte.",
                "Retreat on guard.",
                "Wait on guard.",
                "Lunge and hit the chest.",
                "Hold the lunge and take the touch."
            })
    void one_action_is_one_everywhere(String turn) {
        assertEquals(List.of(), found("one", turn));
        assertEquals(List.of(), found("joined", turn));
        assertEquals(List.of(), found("free", turn));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Extend to the high inside line and lunge.",
                "Advance and lunge.",
                "Beat and thrust to the high inside line.",
                "Parry quarte with a retreat.",
                "Duck with a retreat.",
                "Open the outside line and thrust to the high inside line.",
                "Step back out of distance and parry quarte.",
                "Come to attention and salute.",
                "Take off the mask and retreat.",
                "Parry quarte with an advance.",
                "Place the hand in quarte, opening the outside line.",
                "Parry quarte and retreat.",
                "Recover and retreat.",
                "Recover and take two steps back.",
            })
    void what_is_joined_is_one_action_where_joining_is_allowed(String turn) {
        assertEquals(List.of(), found("joined", turn));
        assertEquals(1, found("one", turn).size());
        assertEquals(List.of(), found("free", turn));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "Parry quarte and riposte to the high inside line. | riposte to the high inside line",
                "Lunge and recover on guard.                       | recover on guard",
                "Parry quarte, then parry sixte.                   | parry sixte",
                "Salute and lunge.                                 | lunge",
                "Thrust to the high inside line and advance.       | advance",
                "Lunge and advance.                                | advance",
                "Parry quarte and advance.                         | advance",
                "Parry quarte, jump forward.                       | jump forward",
                "Recover and advance.                              | advance",
                "Recover, retreat and lunge.                       | lunge",
                "Take quarte and cross step forward.               | cross step forward",
            })
    void a_second_action_is_found_where_it_stands(String turn, String second) {
        List<String> found = found("joined", turn);
        assertEquals(1, found.size(), () -> "found " + found);
        assertEquals("error 4:" + (16 + turn.indexOf(second)) + " '" + second + "'", found.get(0));
        assertEquals(List.of(), found("free", turn));
    }

    @Test
    void what_is_printed_may_not_ask_for_more_than_what_is_read() {
        assertEquals(List.of("error 4:36 'riposte'"), Judged.drill("""
                        steps:
                          - leader: Hold.
                            distance: lunge
                            follower: {say: "Parry quarte, riposte", means: "Parry quarte."}
                        """).findings("too-much-in-a-count"));
    }

    @Test
    void a_callers_word_is_no_action() {
        assertEquals(List.of(), Judged.drill("""
                level: beginner
                form: solo
                steps:
                  - {leader: "Advance! Retreat! Lunge!", follower: Advance., distance: out}
                """).findings("too-much-in-a-count"));
    }
}
