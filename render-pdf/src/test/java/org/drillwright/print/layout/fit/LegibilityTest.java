package org.drillwright.print.layout.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.drillwright.model.CardSize;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.layout.block.DraftMark;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.pdf.Family;
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
        double capHeight = Family.dejaVu().of(Face.REGULAR).capHeight();
        Scale floor = Scale.floor(size, Family.dejaVu());
        double turn = floor.turn() * capHeight;
        Legibility least = Legibility.of(size);
        assertTrue(turn >= least.turns() - 1e-9);
        assertTrue(floor.cue() * capHeight >= least.cues() - 1e-9);
        assertTrue(floor.numeral() * Family.dejaVu().of(Face.BOLD).capHeight() >= 2 * turn);
    }

    /**
     * In millimetres, from 2 x distance x tan(angle / 2), capitals: 20' at 0.4 m, 16' at 0.7 m, 16' at 3 m and 1.5 m; 16'
     * at 0.4 m for distance and safety.
     */
    @ParameterizedTest
    @CsvSource({
        "A7, 2.327, 2.327, 2.327, 1.862",
        "INDEX_3X5, 2.327, 2.327, 2.327, 1.862",
        "A6, 2.327, 2.327, 2.327, 1.862",
        "INDEX_4X6, 2.327, 2.327, 2.327, 1.862",
        "INDEX_5X8, 2.327, 2.327, 2.327, 1.862",
        "A5, 3.258, 3.258, 3.258, 1.862",
        "WALL_A4, 13.963, 13.963, 6.981, 4.654",
        "WALL_A3, 13.963, 13.963, 6.981, 4.654"
    })
    void everySizeIsReadableAtItsDistance(CardSize size, double numerals, double names, double turns, double cues) {
        double regular = Family.dejaVu().of(Face.REGULAR).capHeight();
        double bold = Family.dejaVu().of(Face.BOLD).capHeight();
        Scale floor = Scale.floor(size, Family.dejaVu());
        double hair = 0.01;
        assertTrue(floor.numeral() * bold >= Millimetres.toPoints(numerals) - hair);
        assertTrue(floor.title() * bold >= Millimetres.toPoints(names) - hair);
        assertTrue(floor.turn() * regular >= Millimetres.toPoints(turns) - hair);
        assertTrue(floor.cue() * regular >= Millimetres.toPoints(cues) - hair);
    }

    @Test
    void theFloorOfASmallCardIsAboutNinePoints() {
        // 2.327 mm are 6.60 points; Family's capitals are 0.729 high: 9.05.
        assertEquals(9.05, Scale.floor(CardSize.A6, Family.dejaVu()).turn(), 0.01);
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
