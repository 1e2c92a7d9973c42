package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drillwright.source.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What could not be read is neither held against a drill nor taken for well: it is said, and quoted. {@code frobly} and its
 * like are no words of any language.
 */
class NotJudgedTest {

    private static List<String> warnings(Judged drill) {
        return drill.all().stream()
                .filter(finding -> finding.severity() == Severity.WARNING)
                .filter(finding -> finding.rule().equals("not-fully-checked"))
                .map(finding -> finding.what().english())
                .toList();
    }

    private static List<String> wayOut(Judged drill) {
        return drill.all().stream()
                .filter(finding -> finding.rule().equals("not-fully-checked"))
                .map(finding -> finding.wayOut().english())
                .toList();
    }

    @Test
    void an_unread_word_of_a_turn_leaves_its_count_unjudged_and_is_quoted() {
        Judged drill = Judged.drill("""
                steps:
                  - leader: Extend to the high inside line and lunge.
                    follower: Parry quarte frobly.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                """);
        assertTrue(drill.findings("not-fully-checked").size() >= 1);
        assertTrue(
                wayOut(drill).get(0).contains("Not read: 'frobly'."),
                () -> wayOut(drill).toString());
        assertFalse(drill.subject().coverage().isWhole());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "start: On guard in sixte, blades apart, at lunge distance, frobly. | start",
                "opening: Salute. Masks on. Frob the wug. On guard in sixte.         | opening",
                "closing: Step back out of distance. Masks off. Salute. Frob.        | closing"
            })
    void what_stands_around_the_counts_is_said_to_be_unjudged_too(String line, String part) {
        Judged drill = Judged.drill(line + "\n");
        assertTrue(warnings(drill).contains("Not fully checked: the " + part + "."), () -> "" + drill.all());
        assertFalse(drill.subject().coverage().isWhole());
    }

    /** It may be the salute that was not read. */
    @ParameterizedTest
    @ValueSource(strings = {"Frob. Masks on. On guard in sixte.", "The leader salutes. Frob likewise. Masks on."})
    void a_salute_that_may_be_there_is_not_missed(String opening) {
        Judged drill = Judged.drill("opening: " + opening + "\n");
        assertEquals(List.of(), drill.findings("salute-missing"));
        assertTrue(
                wayOut(drill).stream().anyMatch(text -> text.contains("whether both salute")),
                () -> wayOut(drill).toString());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Salute, if you like. Masks on. On guard in sixte.",
                "Perhaps salute. Masks on. On guard in sixte.",
                "Do not salute. Masks on. On guard in sixte."
            })
    void a_salute_that_need_not_be_is_never_taken_for_one_in_silence(String opening) {
        Judged drill = Judged.drill("opening: " + opening + "\n");
        boolean said = !drill.findings("salute-missing").isEmpty()
                || wayOut(drill).stream().anyMatch(text -> text.contains("whether both salute"));
        assertTrue(said, () -> "" + drill.all());
    }

    /** It may be the masks that were not read. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Salute. Frobs on. On guard in sixte.",
                "Salute and wear frobs. On guard in sixte.",
                "Salute. On guard in sixte with frobs."
            })
    void a_mask_that_may_be_on_is_not_missed(String opening) {
        Judged drill = Judged.drill("opening: " + opening + "\n");
        assertEquals(List.of(), drill.findings("mask-off-in-reach"));
        assertFalse(drill.subject().coverage().isWhole());
    }

    /** Words that make a mask doubtful never count as a mask in silence. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Salute. Masks on, if you like. On guard in sixte.",
                "Salute. Do not put your masks on. On guard in sixte.",
                "Salute. Masks frobly on. On guard in sixte.",
                "Salute. Pretend to put the masks on. On guard in sixte.",
                "Salute. Masks on or off. On guard in sixte."
            })
    void a_mask_in_doubt_is_no_mask(String opening) {
        Judged drill = Judged.drill("opening: " + opening + "\n");
        boolean said = !drill.findings("mask-off-in-reach").isEmpty()
                || !drill.subject().coverage().isWhole();
        assertTrue(said, () -> "" + drill.all());
    }

    /** What a ceding parry may close hangs on the blade it yields to, and whether there is one is not known here. */
    @Test
    void a_parry_that_yields_is_not_judged_where_the_contact_is_not_known() {
        String drill = """
                start: On guard in quarte, engaged, at lunge distance.
                steps:
                  - {leader: Bind the blade to octave., follower: "Yield, the arm frobly.", distance: lunge}
                  - {leader: Lunge to the flank., follower: Ceding parry of quarte., distance: lunge}
                """;
        assertEquals(List.of(), Judged.drill(drill).findings("parry-misses"));
        String apart = drill.replace("engaged", "blades apart")
                .replace("Bind the blade to octave", "Hold")
                .replace("\"Yield, the arm frobly.\"", "Hold.");
        assertEquals(1, Judged.drill(apart).findings("parry-misses").size());
    }
}
