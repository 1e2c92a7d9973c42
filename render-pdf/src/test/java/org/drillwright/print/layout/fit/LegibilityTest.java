package org.drillwright.print.layout.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.drillwright.print.frame.Millimetres;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LegibilityTest {

    /** Heights from NUREG-0700 rev. 2, 1.3.1-4: 6.283 x distance x minutes / 21600. */
    @ParameterizedTest
    @CsvSource({"16, 500, 2.327", "20, 500, 2.909", "22, 1000, 6.399", "16, 3000, 13.963"})
    void heights_are_those_of_the_standards_formula(double minutes, double distance, double millimetres) {
        assertEquals(Millimetres.toPoints(millimetres), Legibility.height(minutes, distance), 0.01);
    }
}
