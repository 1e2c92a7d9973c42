package org.drillwright.print.impose;

import org.drillwright.print.frame.Millimetres;

/**
 * By how much all backs are moved because the printer prints them beside their place.
 *
 * @param x to the right on the back's page, in millimetres
 * @param y downwards on the back's page, in millimetres
 */
public record Shift(double x, double y) {

    /** The blank edge of a card, in millimetres: a larger shift would print over the cut. */
    public static final double MOST = 5;

    public static final Shift NONE = new Shift(0, 0);

    public Shift {
        if (!(Math.abs(x) <= MOST && Math.abs(y) <= MOST)) {
            throw new IllegalArgumentException("a shift is at most " + MOST + " mm either way, not " + x + ", " + y);
        }
    }

    double right() {
        return Millimetres.toPoints(x);
    }

    double down() {
        return Millimetres.toPoints(y);
    }
}
