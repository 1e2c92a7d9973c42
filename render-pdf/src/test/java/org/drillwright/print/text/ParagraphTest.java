package org.drillwright.print.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drillwright.print.frame.Face;
import org.junit.jupiter.api.Test;

/** Lines worked out by hand, in a face whose characters are all one wide. */
class ParagraphTest {

    private static final Typefaces SQUARES = new Squares();

    private static List<String> lines(String text, double measure) {
        return paragraph(text).lines(measure).stream().map(TextLine::text).toList();
    }

    private static Paragraph paragraph(String text) {
        return Paragraph.of(SQUARES, Face.REGULAR, text);
    }

    private static List<String> balanced(String text, double measure) {
        return paragraph(text).balanced(measure).stream().map(TextLine::text).toList();
    }

    @Test
    void running_text_fills_line_after_line() {
        assertEquals(List.of("Stay low", "and then", "rise up"), lines("Stay low and then rise up", 9));
    }

    @Test
    void no_word_of_running_text_stands_on_the_last_line_by_itself() {
        assertEquals(
                List.of("close the high", "line softly", "with care"),
                lines("close the high line softly with care", 16));
        assertEquals(List.of("keep the point low", "and still"), lines("keep the point low and still", 24));
    }

    /** Two lines either way; the longest is 21 or 25 letters. */
    @Test
    void words_for_a_glance_have_the_shortest_longest_line() {
        assertEquals(
                List.of("Straight thrust to", "the high inside line."),
                balanced("Straight thrust to the high inside line.", 26));
    }

    /** The longest line is 9 letters behind 'alone;', 8 elsewhere: less than two more. */
    @Test
    void among_lines_about_as_long_they_end_where_one_pauses() {
        assertEquals(List.of("arm alone;", "no step no"), balanced("arm alone; no step no", 14));
        assertEquals(List.of("one arm,", "nothing"), balanced("one arm, nothing", 10));
    }

    @Test
    void a_sentence_does_not_begin_at_the_end_of_a_line() {
        assertEquals(List.of("Salute.", "On guard", "in sixte"), balanced("Salute. On guard in sixte", 10));
    }

    @Test
    void a_short_last_word_is_not_alone() {
        assertEquals(List.of("Extend the", "arm to it."), balanced("Extend the arm to it.", 17));
    }

    @Test
    void a_number_stays_with_its_unit_and_its_page() {
        assertEquals(List.of("stand off", "6 m apart"), balanced("stand off 6 m apart", 11));
        assertEquals(List.of("Warford", "1884,", "p. 21"), balanced("Warford 1884, p. 21", 8));
    }

    @Test
    void a_hyphened_word_is_whole_where_it_fits() {
        assertEquals(List.of("at", "advance-lunge"), balanced("at advance-lunge", 14));
    }

    @Test
    void a_text_that_fits_is_one_line() {
        assertEquals(List.of("Parry quarte."), lines("Parry quarte.", 13));
    }

    @Test
    void no_line_ends_with_a_word_of_one_letter() {
        assertEquals(List.of("put up", "a parry", "here"), lines("put up a parry here", 8));
    }

    @Test
    void a_lonely_letter_is_not_spared_at_the_cost_of_a_broken_word() {
        assertEquals(List.of("a", "parry"), lines("a parry", 6));
    }

    @Test
    void a_no_break_space_holds_together() {
        assertEquals(List.of("at", "100\u00A0%", "size"), lines("at 100\u00A0% size", 7));
    }

    @Test
    void guillemets_and_high_marks_stay_with_their_words() {
        assertEquals(List.of("dites", "«\u00A0halte\u00A0»", "bien\u00A0!"), lines("dites « halte » bien !", 9));
    }

    @Test
    void no_line_ends_behind_an_elision() {
        assertEquals(List.of("tous", "s’arrêtent"), lines("tous s’arrêtent", 10));
    }

    @Test
    void a_soft_hyphen_is_seen_only_where_a_line_ends() {
        assertEquals(List.of("counter\u00AD", "riposte"), lines("counter\u00ADriposte", 9));
        assertEquals(List.of("counterriposte"), lines("counter\u00ADriposte", 14));
    }

    @Test
    void a_hyphen_of_the_author_parts_a_word_that_is_too_wide() {
        assertEquals(List.of("counter-", "riposte"), lines("counter-riposte", 9));
    }

    @Test
    void a_word_wider_than_its_column_is_broken_without_a_hyphen_and_said_to_be() {
        assertEquals(List.of("abcd", "efgh", "ij"), lines("abcdefghij", 4));
        assertEquals(List.of("abc", "d."), lines("abcd.", 4));
        assertEquals(List.of("abcdefghij"), paragraph("an abcdefghij").tooWide(4));
        assertTrue(paragraph("an abcdefghij").tooWide(10).isEmpty());
        assertTrue(paragraph("counter-riposte").tooWide(9).isEmpty());
    }

    @Test
    void a_character_with_its_marks_is_not_broken() {
        // No composed form exists for x with a tilde, so its two code points stay: each is one wide here.
        assertEquals(List.of("aax", "bcd"), lines("aaxbcd", 3));
        assertEquals(List.of("aa", "x\u0303b", "cd"), lines("aax\u0303bcd", 3));
    }

    @Test
    void white_space_is_one_space_and_nothing_invisible_stays() {
        assertEquals(List.of("one two three"), lines("  one\n two\t\u2003three\u200D ", 99));
    }

    @Test
    void stretches_keep_their_faces() {
        Paragraph mixed =
                Paragraph.of(SQUARES, List.of(new Styled("Gear", Face.BOLD), new Styled("mask, glove", Face.REGULAR)));
        List<TextLine> lines = mixed.lines(11);
        assertEquals(
                List.of(new Styled("Gear ", Face.BOLD), new Styled("mask,", Face.REGULAR)),
                lines.get(0).parts());
        assertEquals(List.of(new Styled("glove", Face.REGULAR)), lines.get(1).parts());
    }
}
