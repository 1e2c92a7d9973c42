package org.drillwright.notation;

import java.util.Locale;

/** The eight positions of the hand, as guards and as parries (facts: Britannica, 9th and 11th ed.; Warford 1884, p. 10-15). */
public enum Position {
    PRIME,
    SECONDE,
    TIERCE,
    QUARTE,
    QUINTE,
    SIXTE,
    SEPTIME,
    OCTAVE;

    /** The word of the trade. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Position of(String id) {
        return valueOf(id.toUpperCase(Locale.ROOT));
    }
}
