package org.drillwright.autofix;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drillwright.check.Corpus;
import org.drillwright.check.Sample;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is mended, and what is left to the author; the measures are counted by hand from the words of the drill. */
class AutofixTest {

    private static final Corpus SCHOOL = Corpus.exampleSchool();

    private static final String DRILL = """
            title: Parry of quarte, straight riposte
            level: intermediate
            form: partner
            weapon: foil
            gear: [mask, jacket, underarm protector, glove] # all of it
            start: On guard in sixte, blades apart, at lunge distance.
            opening: Salute. Masks on. On guard in sixte.
            steps:
              - number: 1
                leader: Extend to the high inside line and lunge.
                follower: Parry quarte.
                distance: lunge
                safety: Arrive softly and let the blade bend.
              - number: 2
                leader: Hold the lunge and take the touch.
                follower: "Riposte straight to the high inside line."
                distance: extension
                safety: Stop the point on the jacket.
              # back
              - number: 3
                leader: Recover on guard in sixte.
                follower: Return to guard in sixte.
                distance: extension to lunge
            closing: Step back out of distance. Masks off. Salute.
            """;

    private static Sample judged(String text) {
        return SCHOOL.judge("a-drill", text);
    }

    private static String mended(String text) {
        return Autofix.of(judged(text).subject());
    }

    private static List<String> said(String text) {
        return judged(text).findings().stream()
                .map(finding -> finding.what().english())
                .toList();
    }

    @Test
    void an_old_name_of_a_rule_becomes_the_new_one() {
        String accepts = DRILL + "accept:\n  \"back-to-start\": the next drill goes on # so it is\n";
        assertEquals(accepts.replace("\"back-to-start\"", "not-back-at-start"), mended(accepts));
        String both = accepts + "  not-back-at-start: twice\n";
        assertEquals(both, mended(both));
    }

    @Test
    void nothing_to_mend_changes_nothing() {
        assertEquals(List.of(), said(DRILL));
        assertEquals(DRILL, mended(DRILL));
    }

    @Test
    void numbers_are_set_right_one_by_one() {
        String wrong = DRILL.replace("number: 2", "number: '3' # two").replace("number: 3\n", "number: 5\n");
        assertEquals(DRILL.replace("number: 2", "number: 2 # two"), mended(wrong));
    }

    /** The lunge is made at lunge distance and ends with the point arriving; on the recovery the measure is a lunge again. */
    @Test
    void a_missing_cue_says_where_the_count_begins_and_ends() {
        String wrong = DRILL.replace("    distance: extension to lunge\n", "");
        assertEquals(DRILL, mended(wrong));
        String second = DRILL.replace("    distance: extension\n", "");
        assertEquals(DRILL, mended(second));
    }

    @Test
    void a_mistyped_cue_is_set_right() {
        assertEquals(DRILL, mended(DRILL.replace("distance: extension\n", "distance: extention\n")));
    }

    @Test
    void a_cue_that_is_a_measure_is_the_authors() {
        String other = DRILL.replace("distance: extension\n", "distance: out\n");
        assertEquals(other, mended(other));
    }

    @Test
    void no_cue_is_made_up_where_the_measure_is_unknown_or_a_move_was_refused() {
        String unknown = DRILL.replace(", at lunge distance", "").replace("    distance: extension\n", "");
        assertEquals(unknown, mended(unknown));
        String refused = DRILL.replace("Parry quarte", "Parry octave").replace("    distance: extension\n", "");
        assertEquals(refused, mended(refused));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "gear: [mask, jacket] # all of it|gear: [mask, jacket, underarm protector, glove] # all of it",
                "gear: ['mask', jacket # warm\\n  ]|gear: ['mask', jacket, underarm protector, glove # warm\\n  ]",
                "gear:\\n- mask # own\\n- jacket|gear:\\n- mask # own\\n- jacket\\n- underarm protector\\n- glove",
                "gear:\\n  - mask\\n  - >-\\n    jacket\\n# why|gear:\\n  - mask\\n  - >-\\n    jacket\\n  - underarm protector\\n  - glove\\n# why",
                "gear: [] # none|gear: [mask, jacket, underarm protector, glove] # none",
                "# none|gear: [mask, jacket, underarm protector, glove]\\n# none"
            })
    void missing_gear_is_added_at_the_end_of_the_list(String before, String after) {
        String list = "gear: [mask, jacket, underarm protector, glove] # all of it";
        assertEquals(
                DRILL.replace(list, after.replace("\\n", "\n")),
                mended(DRILL.replace(list, before.replace("\\n", "\n"))));
    }

    /** Whether 'no glove' is a slip or meant, and which mask is the sabre's, the author knows. */
    @Test
    void gear_that_is_spoken_of_is_left_to_the_author() {
        String none = DRILL.replace("glove]", "no glove]");
        assertTrue(said(none).get(0).contains("glove"));
        assertEquals(none, mended(none));
    }

    @Test
    void a_count_between_braces_gets_its_cue_between_them() {
        String braces = DRILL.replace(
                """
                  - number: 3
                    leader: Recover on guard in sixte.
                    follower: Return to guard in sixte.
                    distance: extension to lunge
                """, "  - {number: 3, leader: Recover on guard in sixte., follower: 'Return to guard in sixte.'}\n");
        assertEquals(braces.replace("sixte.'}", "sixte.', distance: extension to lunge}"), mended(braces));
    }

    @Test
    void line_ends_and_turns_in_two_tongues_stay() {
        String split = DRILL.replace(
                        "    follower: Return to guard in sixte.\n",
                        "    follower:\n      say: En garde.\n      means: Return to guard in sixte. \n")
                .replace("\n", "\r\n");
        assertEquals(split, mended(split.replace("    distance: extension to lunge\r\n", "")));
    }
}
