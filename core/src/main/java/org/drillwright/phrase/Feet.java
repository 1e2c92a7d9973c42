package org.drillwright.phrase;

/** How a person stands. */
public enum Feet {
    STANDING,
    ON_GUARD,
    LUNGED
}
