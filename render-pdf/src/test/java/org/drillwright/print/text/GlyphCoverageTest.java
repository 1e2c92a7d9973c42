package org.drillwright.print.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.print.pdf.Family;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class GlyphCoverageTest {

    private final GlyphCoverage coverage = new GlyphCoverage(Family.dejaVu());

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Épée, fleuret, sabre: à gauche, où, çà, cœur, l’arrêt",
                "perché, così, virtù",
                "ő ű ł ż ğ ı İ",
                "Đường kiếm",
                "Рапира",
                "ξίφος",
                "→ ✓ ½ … – — “ ” « »",
                "e\u0301",
                "soft\u00ADhyphen, no-break\u00A0space, zero\u200Bwidth"
            })
    void covers_what_schools_write(String text) {
        assertEquals(List.of(), coverage.missing(text));
    }

    @Test
    void names_each_character_that_is_lacking_once() {
        assertEquals(List.of(0x1F93A, 0x5251), coverage.missing("\uD83E\uDD3A a \u5251 b \u5251"));
    }

    /** Saif, sword, in Hebrew letters and in Arabic ones; the same with points; in Syriac, which the font lacks. */
    @Test
    void letters_are_covered_with_their_points_and_forms() {
        assertEquals(List.of(), coverage.missing("\u05E1\u05D9\u05E3"));
        assertEquals(List.of(), coverage.missing("\u0633\u064A\u0641"));
        assertEquals(List.of(), coverage.missing("\u0633\u064E\u064A\u0641"));
        assertEquals(List.of(), coverage.missing("\u05E1\u05B7\u05D9\u05E3"));
        assertEquals(List.of(0x0723, 0x071D, 0x0726), coverage.missing("\u0723\u071D\u0726"));
    }

    /** A joiner between letters that it changes isn't lost, and has no glyph; between others it goes. */
    @Test
    void joiners_stay_where_they_do_something() {
        assertEquals("\u0DC1\u0DCA\u200D\u0DBB\u0DD3", Wording.clean("\u0DC1\u0DCA\u200D\u0DBB\u0DD3"));
        assertEquals("\u06CC\u200C\u0631", Wording.clean("\u06CC\u200C\u0631"));
        assertEquals(List.of(), coverage.missing("\u06CC\u200C\u0631"));
        assertEquals("ab", Wording.clean("a\u200Db"));
    }

    @Test
    void control_characters_are_lacking() {
        assertEquals(List.of(7), coverage.missing("bell\u0007"));
    }
}
