package org.drillwright.print.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drillwright.print.frame.Face;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines worked out by hand, in a face whose characters are all one wide. */
class ParagraphTest {

    private static final Typefaces SQUARES = new Squares();

    private static List<String> lines(String text, double measure) {
        return paragraph(text).lines(measure).stream().map(TextLine::text).toList();
    }

    private static Paragraph paragraph(String text) {
        return Paragraph.of(SQUARES, Face.REGULAR, text);
    }

    @Test
    void theWholeParagraphIsWeighedNotLineAfterLine() {
        // Line after line gives 'aaa bb', 'cc', 'ddddd': blanks 0, 4. This way: 3, 1, and 9 + 1 < 16.
        assertEquals(List.of("aaa", "bb cc", "ddddd"), lines("aaa bb cc ddddd", 6));
    }

    @Test
    void aTextThatFitsIsOneLine() {
        assertEquals(List.of("Parry quarte."), lines("Parry quarte.", 13));
    }

    @Test
    void noLineEndsWithAWordOfOneLetter() {
        assertEquals(List.of("put up", "a parry", "here"), lines("put up a parry here", 8));
    }

    @Test
    void aLonelyLetterIsNotSparedAtTheCostOfABrokenWord() {
        assertEquals(List.of("a", "parry"), lines("a parry", 6));
    }

    @Test
    void aNoBreakSpaceHoldsTogether() {
        assertEquals(List.of("at", "100\u00A0%", "size"), lines("at 100\u00A0% size", 7));
    }

    @Test
    void guillemetsAndHighMarksStayWithTheirWords() {
        assertEquals(List.of("dites", "«\u00A0halte\u00A0»", "bien\u00A0!"), lines("dites « halte » bien !", 9));
    }

    @Test
    void noLineEndsBehindAnElision() {
        assertEquals(List.of("tous", "s’arrêtent"), lines("tous s’arrêtent", 10));
    }

    @Test
    void aSoftHyphenIsSeenOnlyWhereALineEnds() {
        assertEquals(List.of("counter\u00AD", "riposte"), lines("counter\u00ADriposte", 9));
        assertEquals(List.of("counterriposte"), lines("counter\u00ADriposte", 14));
    }

    @Test
    void aHyphenOfTheAuthorEndsALineToo() {
        assertEquals(List.of("counter-", "riposte"), lines("counter-riposte", 9));
    }

    @Test
    void aWordWiderThanItsColumnIsBrokenWithAHyphenAndSaidToBe() {
        assertEquals(List.of("abc\u00AD", "def\u00AD", "ghij"), lines("abcdefghij", 4));
        assertEquals(List.of("abcdefghij"), paragraph("an abcdefghij").tooWide(4));
        assertTrue(paragraph("an abcdefghij").tooWide(10).isEmpty());
    }

    @Test
    void aCharacterWithItsMarksIsNotBroken() {
        // No composed form exists for x with a tilde, so its two code points stay: each is one wide here.
        assertEquals(List.of("ax\u0303\u00AD", "bcd"), lines("ax\u0303bcd", 4));
    }

    @Test
    void whiteSpaceIsOneSpaceAndNothingInvisibleStays() {
        assertEquals(List.of("one two three"), lines("  one\n two\t\u2003three\u200D ", 99));
    }

    @Test
    void stretchesKeepTheirFaces() {
        Paragraph mixed =
                Paragraph.of(SQUARES, List.of(new Styled("Gear", Face.BOLD), new Styled("mask, glove", Face.REGULAR)));
        List<TextLine> lines = mixed.lines(11);
        assertEquals(
                List.of(new Styled("Gear ", Face.BOLD), new Styled("mask,", Face.REGULAR)),
                lines.get(0).parts());
        assertEquals(List.of(new Styled("glove", Face.REGULAR)), lines.get(1).parts());
    }

    @ParameterizedTest
    @CsvSource({"13, 1", "12, 2", "7, 2"})
    void linesAreCountedAsTheyAreMade(double measure, int expected) {
        assertEquals(expected, paragraph("Parry quarte.").lineCount(measure));
        assertEquals(expected, paragraph("Parry quarte.").lines(measure).size());
    }
}
