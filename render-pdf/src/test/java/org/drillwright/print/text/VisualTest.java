package org.drillwright.print.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Capitals stand for Hebrew letters, as in Unicode Standard Annex 9: they are read from right to left. What is expected was
 * ordered by hand by its rules.
 */
class VisualTest {

    private static String hebrew(String written) {
        StringBuilder text = new StringBuilder();
        written.chars().forEach(unit -> text.append((char) (unit >= 'A' && unit <= 'Z' ? 0x05D0 + unit - 'A' : unit)));
        return text.toString();
    }

    private static String seen(Visual visual) {
        char[] seen = new char[visual.places().size()];
        for (int at = 0; at < seen.length; at++) {
            int codePoint = visual.codePoints().get(at);
            boolean letter = codePoint >= 0x05D0 && codePoint <= 0x05EA;
            seen[visual.places().get(at)] = (char) (letter ? codePoint - 0x05D0 + 'A' : codePoint);
        }
        return new String(seen);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "true  | \"ABC.\"            | \".CBA\"",
                "true  | \"ABC 12 DE\"       | \"ED 12 CBA\"",
                "true  | \"AB (p. 12).\"     | \".(p. 12) BA\"",
                "true  | \"salute. stop.\"   | \"salute. stop.\"",
                "true  | \"start \"          | \" start\"",
                "true  | \"c43-66\"          | \"c43-66\"",
                "false | \"the ABC word\"    | \"the CBA word\"",
                "false | \"the ABC DE word\" | \"the ED CBA word\"",
            })
    void letters_stand_where_they_are_read_on_paper(boolean rightToLeft, String text, String seen) {
        assertEquals(seen, seen(Visual.of(hebrew(text), rightToLeft)));
    }
}
