package org.drillwright.check.courtesy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Corpus;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A salute with no subject, or to the partner, is by both; a named single person salutes alone. */
class SaluteMissingTest {

    private static List<String> found(String lines) {
        return Judged.drill(lines).findings("salute-missing");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Salute. Masks on.",
                "Salute your partner. Masks on.",
                "Salute each other. Masks on.",
                "Both salute. Masks on.",
                "The leader salutes. The follower salutes. Masks on.",
                "Saluez. Masque mis.",
                "Saluto. Maschera in testa."
            })
    void a_salute_by_both_is_enough(String opening) {
        assertEquals(List.of(), found("opening: " + opening));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Masks on. On guard in sixte.",
                "The leader salutes. Masks on.",
                "The follower salutes. Masks on.",
                "Attention. Masks on.",
            })
    void a_salute_that_is_absent_or_by_one_alone_is_found(String opening) {
        assertEquals(List.of("error 1:10 '" + opening + "'"), found("opening: " + opening));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Masks off, swap", "Masks off, swap."})
    void what_is_to_be_written_is_whole_sentences(String closing) {
        List<String> ways = Corpus.correct().judge("ends", """
                title: Ends
                level: intermediate
                form: partner
                weapon: foil
                opening: Salute. Masks on. On guard.
                steps:
                  - {leader: Hold., follower: Hold., distance: lunge}
                closing: CLOSING
                """.replace("CLOSING", closing)).findings().stream()
                .filter(finding -> finding.rule().equals("salute-missing"))
                .map(finding -> finding.wayOut().english())
                .toList();
        assertEquals(List.of("Write: closing: Masks off, swap. Salute."), ways);
    }

    @Test
    void a_drill_without_opening_and_closing_is_told_what_to_add() {
        List<String> said = Corpus.correct().judge("bare", """
                title: Bare
                level: intermediate
                form: partner
                weapon: foil
                gear: [mask, jacket, underarm protector, glove]
                start: On guard in sixte, blades apart, at lunge distance.
                steps:
                  - {leader: Hold., follower: Hold., distance: lunge}
                """).findings().stream()
                .filter(finding -> finding.rule().equals("salute-missing"))
                .map(finding ->
                        finding.what().english() + " " + finding.wayOut().english())
                .toList();
        assertEquals(
                List.of(
                        "The drill has no opening, so there is no salute at its beginning."
                                + " Add a line: opening: Salute. Masks on. On guard.",
                        "The drill has no closing, so there is no salute at its end."
                                + " Add a line: closing: Step back out of distance. Masks off. Salute."),
                said);
    }

    @ParameterizedTest
    @ValueSource(strings = {"Step back out of distance. Masks off.", "Masks off. The leader salutes."})
    void the_closing_is_asked_as_well(String closing) {
        assertEquals(List.of("error 1:10 '" + closing + "'"), found("closing: " + closing));
    }
}
