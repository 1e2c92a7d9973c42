package org.drillwright.print.frame;

/** Which way up a frame lies inside another: the side that its top points to. */
public enum Quarter {
    UP,
    LEFT,
    DOWN,
    RIGHT;

    /** Whether what it holds lies on its side. */
    public boolean onItsSide() {
        return this == LEFT || this == RIGHT;
    }
}
