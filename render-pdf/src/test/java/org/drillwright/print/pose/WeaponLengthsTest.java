package org.drillwright.print.pose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.drillwright.model.Weapon;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Point;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Weapons are as long as the rules let them be. */
class WeaponLengthsTest {

    private static final double MILLIMETRE = 0.001;

    /**
     * FIE Material Rules, from memory: the blade of foil and épée at most 90 cm, of the sabre at most 88 cm; the whole
     * weapon at most 110 cm (foil m.8, épée m.16), 105 cm (sabre m.23).
     */
    @ParameterizedTest
    @CsvSource({"FOIL, 0.90, 1.10", "EPEE, 0.90, 1.10", "SABRE, 0.88, 1.05"})
    void blade_and_whole_weapon(Weapon weapon, double blade, double whole) {
        assertEquals(blade, Arms.blade(weapon), MILLIMETRE);
        assertTrue(Arms.blade(weapon) + Arms.GRIP < whole, "the hand is on the hilt");
    }

    /** A bent blade is as long along its curve as a straight one. */
    @ParameterizedTest
    @CsvSource({"0.80", "0.845", "0.86", "0.89", "0.8999"})
    void a_bent_blade_is_no_longer(double chord) {
        Blade blade = Blade.bent(new Point(0, 0, 1.2), new Point(chord * 0.96, chord * 0.28, 1.2), 0.90);
        assertEquals(0.90, blade.length(), MILLIMETRE);
    }
}
