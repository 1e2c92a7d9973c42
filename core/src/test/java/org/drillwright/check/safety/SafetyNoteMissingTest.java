package org.drillwright.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SafetyNoteMissingTest {

    private static List<String> found(String leader, String note) {
        return Judged.drill("steps:\n  - leader: " + leader + "\n    follower: Parry quarte.\n    distance: lunge\n"
                        + (note.isEmpty() ? "" : "    safety: \"" + note + "\"\n"))
                .findings("safety-note-missing");
    }

    private static final String THRUST = "Extend to the high inside line and lunge.";

    @ParameterizedTest(name = "{0}")
    @ValueSource(
            strings = {
                THRUST,
                "Feint to the high inside line.",
                "Straight thrust to the low inside line.",
                "Take the touch."
            })
    void a_count_on_which_a_point_can_arrive_asks_for_a_note(String leader) {
        assertEquals(List.of("error 2:5 'leader: " + leader + "'"), found(leader, ""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Advance.", "Recover on guard in sixte.", "Hold.", "Lunge."})
    void a_count_on_which_none_can_does_not(String leader) {
        assertEquals(List.of(), found(leader, ""));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            value = {
                "Take care.                        | 0",
                "Softly!                           | 0",
                "Arrive softly and slowly.         | 0",
                "Don't press; arrive softly.       | 0",
                "- - - -                           | 1",
                "Arrivez doucement, bras souple.   | 0",
                "\u30cf\u30eb\u30c8\u3068\u547c\u3076\u3053\u3068           | 0",
            })
    void a_note_may_be_short_but_says_something(String note, int findings) {
        assertEquals(findings, found(THRUST, note).size());
    }

    private static final String TWO = """
            steps:
              - leader: Extend to the high inside line and lunge.
                follower: Parry quarte.
                distance: lunge
                safety: Arrive softly and let it bend.
              - leader: Hold the lunge and take the touch.
                follower: Riposte straight to the high inside line.
                distance: extension
                safety: %s
            """;

    @Test
    void the_same_note_on_every_count_is_a_warning() {
        assertEquals(
                List.of("warning 5:13 'Arrive softly and let it bend.'"),
                Judged.drill(String.format(TWO, "arrive softly, and let it bend"))
                        .findings("safety-note-missing"));
        assertEquals(
                List.of(),
                Judged.drill(String.format(TWO, "Stop the point on him.")).findings("safety-note-missing"));
    }

    @Test
    void notes_of_another_script_that_differ_are_not_the_same() {
        String greek =
                TWO.replace("Arrive softly and let it bend.", "\u03b1\u03b2 \u03b3\u03b4 \u03b5\u03b6 \u03b7\u03b8.");
        assertEquals(
                List.of(),
                Judged.drill(String.format(greek, "\u03b9\u03ba \u03bb\u03bc \u03bd\u03be \u03bf\u03c0."))
                        .findings("safety-note-missing"));
    }

    @Test
    void one_count_alone_has_nothing_to_be_the_same_as() {
        assertEquals(List.of(), found(THRUST, "Arrive softly and let it bend."));
    }

    @Test
    void a_solo_drill_needs_none() {
        assertEquals(List.of(), Judged.drill("""
                form: solo
                steps:
                  - {leader: Lunge!, follower: Extend and lunge., distance: out}
                """).findings("safety-note-missing"));
    }
}
