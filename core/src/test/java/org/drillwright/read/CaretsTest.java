package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.drillwright.source.FieldPath;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.source.Written;
import org.junit.jupiter.api.Test;

/**
 * One turn in all five styles of YAML. The word that is planted in it is found in the text that was read, and its place in
 * the file is drawn as a mark under it, so that a wrong place is seen.
 */
class CaretsTest {

    private static final String HEAD = """
            title: Marks
            level: intermediate
            form: partner
            weapon: foil
            steps:
              - leader: Hold.
                follower:\s""";

    /** Draws the marks of a word in the lines of the turn; a line that holds none of it is left without. */
    private static String marked(String turn, String word) {
        String text = HEAD + turn + "    distance: lunge\n";
        ReadDrill drill = Files.read(text).value().orElseThrow(() -> new AssertionError(text));
        Written words = drill.places().words(FieldPath.of("steps/0/follower")).orElseThrow();
        int from = words.text().indexOf(word);
        if (from < 0) {
            throw new AssertionError("'" + word + "' is not in '" + words.text() + "'");
        }
        return draw(drill.file(), words.span(from, from + word.length()));
    }

    private static String draw(SourceFile file, Span span) {
        StringBuilder drawn = new StringBuilder();
        for (int number = 7; number < file.lineCount() - 1; number++) {
            Span line = file.line(number);
            drawn.append(file.slice(line)).append('\n');
            int start = Math.max(line.start(), span.start());
            int end = Math.min(line.end(), span.end());
            if (start < end) {
                drawn.append(" ".repeat(points(file, line.start(), start)))
                        .append("^".repeat(points(file, start, end)))
                        .append('\n');
            }
        }
        return drawn.toString();
    }

    private static int points(SourceFile file, int from, int to) {
        return file.text().codePointCount(from, to);
    }

    private static void assertMarked(String turn, String word, String drawn) {
        assertEquals(drawn, marked(turn, word));
    }

    @Test
    void plain() {
        assertMarked("Parry quarte firmly.\n", "quarte", """
                    follower: Parry quarte firmly.
                                    ^^^^^^
                """);
    }

    @Test
    void plain_over_several_lines() {
        assertMarked("Parry\n      in quarte\n\n      firmly.\n", "quarte", """
                    follower: Parry
                      in quarte
                         ^^^^^^

                      firmly.
                """);
    }

    @Test
    void plain_and_the_words_lie_on_two_lines() {
        assertMarked("Parry in\n      quarte firmly.\n", "in quarte", """
                    follower: Parry in
                                    ^^
                      quarte firmly.
                ^^^^^^^^^^^^
                """);
    }

    @Test
    void single_quoted() {
        assertMarked("'Don''t rush; parry quarte.'\n", "quarte", """
                    follower: 'Don''t rush; parry quarte.'
                                                  ^^^^^^
                """);
    }

    @Test
    void single_quoted_and_the_word_holds_a_quote() {
        assertMarked("'Don''t rush.'\n", "Don't", """
                    follower: 'Don''t rush.'
                               ^^^^^^
                """);
    }

    @Test
    void single_quoted_over_several_lines() {
        assertMarked("'Don''t\n      rush; parry\n\n      quarte.'\n", "quarte", """
                    follower: 'Don''t
                      rush; parry

                      quarte.'
                      ^^^^^^
                """);
    }

    @Test
    void double_quoted_with_escapes() {
        assertMarked("\"\\u00C9p\\xe9e: \\\"parry\\\" quarte.\"\n", "quarte", """
                    follower: "\\u00C9p\\xe9e: \\"parry\\" quarte."
                                                       ^^^^^^
                """);
    }

    @Test
    void double_quoted_and_the_word_holds_escapes() {
        assertMarked("\"A \\u00C9p\\xe9e b\"\n", "\u00c9p\u00e9e", """
                    follower: "A \\u00C9p\\xe9e b"
                                 ^^^^^^^^^^^^
                """);
    }

    @Test
    void double_quoted_over_several_lines() {
        assertMarked("\"Parry \\\n      in qu\\\n      arte\n      firmly.\"\n", "quarte", """
                    follower: "Parry \\
                      in qu\\
                         ^^^
                      arte
                ^^^^^^^^^^
                      firmly."
                """);
    }

    @Test
    void double_quoted_with_a_pair_of_escapes_for_one_character() {
        assertMarked("\"A \\uD83E\\uDD3A b quarte\"\n", "\ud83e\udd3a", """
                    follower: "A \\uD83E\\uDD3A b quarte"
                                 ^^^^^^^^^^^^
                """);
    }

    @Test
    void folded() {
        assertMarked(">\n      Parry\n      in quarte\n\n      firmly.\n", "quarte", """
                    follower: >
                      Parry
                      in quarte
                         ^^^^^^

                      firmly.
                """);
    }

    @Test
    void folded_with_a_header_and_a_remark_in_it() {
        assertMarked(">2- # parry quarte\n      Parry quarte.\n", "quarte", """
                    follower: >2- # parry quarte
                      Parry quarte.
                            ^^^^^^
                """);
    }

    @Test
    void literal() {
        assertMarked("|\n      Parry\n        in quarte\n      firmly.\n", "quarte", """
                    follower: |
                      Parry
                        in quarte
                           ^^^^^^
                      firmly.
                """);
    }

    @Test
    void lone_returns_at_the_ends_of_lines() {
        String text = (HEAD + "|\n      Parry\n      quarte.\n    distance: lunge\n").replace('\n', '\r');
        ReadDrill drill = Files.read(text).value().orElseThrow();
        Written words = drill.places().words(FieldPath.of("steps/0/follower")).orElseThrow();
        int from = words.text().indexOf("quarte");
        assertEquals(new Span(text.indexOf("quarte"), text.indexOf("quarte") + 6), words.span(from, from + 6));
    }

    @Test
    void accents_as_one_character_and_as_two() {
        assertMarked("\u00c9p\u00e9e: no.\n".replace(":", ","), "\u00c9p\u00e9e", """
                    follower: \u00c9p\u00e9e, no.
                              ^^^^
                """);
        assertMarked("E\u0301pe\u0301e, no quarte.\n", "\u00c9p\u00e9e", """
                    follower: E\u0301pe\u0301e, no quarte.
                              ^^^^^^
                """);
        assertMarked("'E\u0301pe\u0301e, no quarte.'\n", "quarte", """
                    follower: 'E\u0301pe\u0301e, no quarte.'
                                          ^^^^^^
                """);
    }

    @Test
    void an_emoji_before_the_word() {
        assertMarked("\ud83e\udd3a\ud83e\udd3a parry quarte.\n", "quarte", """
                    follower: \ud83e\udd3a\ud83e\udd3a parry quarte.
                                       ^^^^^^
                """);
        assertMarked("|\n      \ud83e\udd3a parry\n      quarte.\n", "quarte", """
                    follower: |
                      \ud83e\udd3a parry
                      quarte.
                      ^^^^^^
                """);
    }
}
