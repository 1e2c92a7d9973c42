package org.drillwright.notation;

/** The side of the body (inside) or the back (outside) of the one attacked. */
public enum Width {
    INSIDE,
    OUTSIDE;

    public Width other() {
        return this == INSIDE ? OUTSIDE : INSIDE;
    }
}
