package org.drillwright.print.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drillwright.print.pdf.Family;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CoverageTest {

    private final Coverage coverage = new Coverage(Family.dejaVu());

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
    void coversWhatSchoolsWrite(String text) {
        assertEquals(List.of(), coverage.missing(text));
    }

    @Test
    void namesEachCharacterThatIsLackingOnce() {
        assertEquals(List.of(0x1F93A, 0x5251), coverage.missing("\uD83E\uDD3A a \u5251 b \u5251"));
    }

    /** Saif, sword, in Hebrew letters and in Arabic ones; the same with points, which have their place; in Syriac. */
    @Test
    void ofScriptsFromRightToLeftHebrewAndArabicWithoutPointsAreCovered() {
        assertEquals(List.of(), coverage.missing("\u05E1\u05D9\u05E3"));
        assertEquals(List.of(), coverage.missing("\u0633\u064A\u0641"));
        assertEquals(List.of(0x064E), coverage.missing("\u0633\u064E\u064A\u0641"));
        assertEquals(List.of(0x0723, 0x071D, 0x0726), coverage.missing("\u0723\u071D\u0726"));
        assertEquals(List.of(0x05B7), coverage.missing("\u05E1\u05B7\u05D9\u05E3"));
    }

    /** Devanagari and Khmer letters change their order (The Unicode Standard, sections 12.1 and 16.4), Chinese ones do not. */
    @Test
    void lettersThatChangeTheirOrderAreNotSetWithAnyFont() {
        assertTrue(Coverage.isShaped(0x0928));
        assertTrue(Coverage.isShaped(0x1780));
        assertFalse(Coverage.isShaped(0x5251));
    }

    @Test
    void controlCharactersAreLacking() {
        assertEquals(List.of(7), coverage.missing("bell\u0007"));
    }
}
