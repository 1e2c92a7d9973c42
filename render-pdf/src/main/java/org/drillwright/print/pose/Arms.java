package org.drillwright.print.pose;

import org.drillwright.model.Weapon;

/**
 * Lengths of weapons, in metres.
 *
 * <p>After the FIE's Material Rules, from memory: blade with hilt at most 1.10 m (foil m.8, épée m.16) and 1.05 m (sabre
 * m.23), blade at most 0.90 m and 0.88 m.
 */
final class Arms {

    /** From the wrist to the front of the bell. */
    static final double GRIP = 0.115;

    private Arms() {}

    /** From the front of the bell to the end; 0 without a weapon. */
    static double blade(Weapon weapon) {
        return switch (weapon) {
            case FOIL, EPEE -> 0.90;
            case SABRE -> 0.88;
            case NONE -> 0;
        };
    }
}
