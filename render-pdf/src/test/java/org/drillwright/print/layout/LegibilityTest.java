package org.drillwright.print.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.drillwright.model.CardSize;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.pdf.DejaVu;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class LegibilityTest {

    /** Heights from NUREG-0700 rev. 2, 1.3.1-4: 6.283 x distance x minutes / 21600. */
    @ParameterizedTest
    @CsvSource({"16, 500, 2.327", "20, 500, 2.909", "22, 1000, 6.399", "16, 3000, 13.963"})
    void heightsAreThoseOfTheStandardsFormula(double minutes, double distance, double millimetres) {
        assertEquals(Millimetres.toPoints(millimetres), Legibility.height(minutes, distance), 0.01);
    }

    @ParameterizedTest
    @EnumSource
    void theFloorMeetsTheAngles(CardSize size) {
        double capHeight = DejaVu.family().of(Face.REGULAR).capHeight();
        Scale floor = Scale.floor(size, DejaVu.family());
        double turn = floor.turn() * capHeight;
        Legibility least = Legibility.of(size);
        assertTrue(turn >= least.turns() - 1e-9);
        assertTrue(floor.cue() * capHeight >= least.cues() - 1e-9);
        assertTrue(floor.numeral() * DejaVu.family().of(Face.BOLD).capHeight() >= 2 * turn);
    }

    @Test
    void theFloorOfASmallCardIsAboutNinePoints() {
        // 2.327 mm are 6.60 points; DejaVu's capitals are 0.729 high: 9.05.
        assertEquals(9.05, Scale.floor(CardSize.A6, DejaVu.family()).turn(), 0.01);
    }

    /** WCAG 2.1, 1.4.6, asks for 7 to 1; luminance as defined there. */
    @Test
    void blackOnTheGreysOfACardStandsOutSevenToOne() {
        assertTrue(contrast(Press.BAND) >= 7);
        assertTrue(contrast(DraftMark.INK) >= 7);
        assertTrue(contrast(new Ink(0.5)) < 7, "a middle grey would not do");
    }

    private static double contrast(Ink ground) {
        double value = ground.lightness();
        double luminance = value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
        return (luminance + 0.05) / 0.05;
    }
}
