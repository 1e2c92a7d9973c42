package org.drillwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

/** The mark stands under the very words, as wide as a terminal draws them. */
class TextReportTest {

    private static String report(String text, String words) {
        int start = text.indexOf(words);
        return TextReport.of(List.of(finding(text, new Span(start, start + words.length()))), Paint.NONE);
    }

    private static Finding finding(String text, Span span) {
        return new Finding(
                "a-rule",
                Severity.ERROR,
                new SourceFile("a.yaml", text),
                span,
                Message.plain("What."),
                Message.plain("The way out."));
    }

    @Test
    void a_finding_names_place_rule_line_and_way_out() {
        assertEquals("""
                a.yaml, line 2, column 11: error (a-rule)
                    2 | follower: Parry octave.
                      |           ^^^^^^^^^^^^
                  What.
                  The way out.

                """, report("leader: Lunge.\nfollower: Parry octave.\n", "Parry octave"));
    }

    @Test
    void without_a_way_out_there_is_no_line_for_it() {
        Finding bare = new Finding(
                "a-rule",
                Severity.NOTE,
                new SourceFile("a.yaml", "x"),
                Span.at(0),
                Message.plain("What."),
                Message.plain(""));
        assertEquals("""
                a.yaml, line 1, column 1: note (a-rule)
                    1 | x
                      | ^
                  What.

                """, TextReport.of(List.of(bare), Paint.NONE));
    }

    @Test
    void a_file_without_text_shows_no_line() {
        assertEquals("""
                a.yaml, line 1, column 1: error (a-rule)
                  What.
                  The way out.

                """, TextReport.of(List.of(finding("", Span.at(0))), Paint.NONE));
    }

    /** The line and the mark line, without what stands before the text. */
    private static List<String> drawn(String text, String words) {
        return report(text, words)
                .lines()
                .skip(1)
                .limit(2)
                .map(line -> line.substring(8))
                .toList();
    }

    @Test
    void a_mark_that_sits_on_a_letter_takes_no_column() {
        assertEquals(List.of("e\u0301pe\u0301e fine", "     ^^^^"), drawn("e\u0301pe\u0301e fine", "fine"));
        assertEquals(List.of("e\u0301pe\u0301e fine", "^^^^"), drawn("e\u0301pe\u0301e fine", "e\u0301pe\u0301e"));
    }

    @Test
    void a_wide_character_takes_two_columns() {
        assertEquals(List.of("\u5263\u9053\u3001fine", "      ^^^^"), drawn("\u5263\u9053\u3001fine", "fine"));
        assertEquals(List.of("a \u5263\u9053", "  ^^^^"), drawn("a \u5263\u9053", "\u5263\u9053"));
        assertEquals(
                List.of("\uff21\u3000\u304b\ud55c fine", "         ^^^^"),
                drawn("\uff21\u3000\u304b\ud55c fine", "fine"));
        assertEquals(
                List.of("\ud83d\ude00\ud83e\udd3a fine", "     ^^^^"), drawn("\ud83d\ude00\ud83e\udd3a fine", "fine"));
    }

    @Test
    void other_letters_take_one() {
        for (String letter : List.of("\u00e9", "\u0416", "\u05d0", "\u0e01", "\u2694", "\uff71", "\u2026")) {
            assertEquals(List.of(letter + " fine", "  ^^^^"), drawn(letter + " fine", "fine"));
        }
    }

    @Test
    void a_tab_stays_a_tab() {
        assertEquals(List.of("\ta\tfine", "\t \t^^^^"), drawn("\ta\tfine", "fine"));
    }

    @Test
    void what_would_steer_the_terminal_is_shown_by_a_stand_in() {
        assertEquals(List.of("a\ufffd[31m\ufffdb fine", "         ^^^^"), drawn("a\u001b[31m\u202eb fine", "fine"));
        assertEquals(List.of("a\ufffdb", " ^"), drawn("a\u0007b", "\u0007"));
    }

    @Test
    void a_long_line_is_shortened_on_both_sides() {
        String text = "x".repeat(200) + "fine" + "y".repeat(200);
        List<String> drawn = drawn(text, "fine");
        assertEquals("\u2026" + "x".repeat(60) + "fine" + "y".repeat(46) + "\u2026", drawn.get(0));
        assertEquals(" ".repeat(61) + "^^^^", drawn.get(1));
    }

    @Test
    void a_long_line_is_never_cut_inside_a_character() {
        String text = "\ud83e\udd3a".repeat(100) + "fine" + "\ud83e\udd3a".repeat(100);
        for (int more = 0; more < 4; more++) {
            String shown = drawn("x".repeat(more) + text, "fine").get(0);
            assertTrue(shown.codePoints().noneMatch(point -> point >= 0xD800 && point <= 0xDFFF), shown);
        }
    }

    @Test
    void words_that_go_on_in_the_next_line_are_marked_to_the_lines_end() {
        assertEquals(List.of("one two", "    ^^^"), drawn("one two\r\nthree", "two\r\nthree"));
    }

    @Test
    void a_mark_is_never_empty() {
        String text = "one\ntwo\n";
        for (int at = 0; at <= text.length(); at++) {
            String report = TextReport.of(List.of(finding(text, Span.at(at))), Paint.NONE);
            assertTrue(report.contains("^"), report);
            assertFalse(report.contains("^^"), report);
        }
    }

    @Test
    void two_findings_are_parted_by_an_empty_line() {
        Finding one = finding("abc", new Span(0, 1));
        String report = TextReport.of(List.of(one, one), Paint.NONE);
        assertEquals(2, report.split("\n\n").length);
    }

    @Test
    void paint_is_put_round_words_and_not_into_them() {
        Paint angled = new Paint() {
            @Override
            public String severity(Severity severity, String word) {
                return "<" + word + ">";
            }

            @Override
            public String caret(Severity severity, String text) {
                return "<" + text + ">";
            }
        };
        assertEquals("""
                a.yaml, line 1, column 1: <error> (a-rule)
                    1 | abc
                      | <^^>
                  What.
                  The way out.

                """, TextReport.of(List.of(finding("abc", new Span(0, 2))), angled));
    }
}
