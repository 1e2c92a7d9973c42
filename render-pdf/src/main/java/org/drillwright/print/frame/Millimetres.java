package org.drillwright.print.frame;

/** Paper is measured in millimetres, frames in points. */
public final class Millimetres {

    private static final double POINTS_AN_INCH = 72;
    private static final double MILLIMETRES_AN_INCH = 25.4;

    private Millimetres() {}

    public static double toPoints(double millimetres) {
        return millimetres * POINTS_AN_INCH / MILLIMETRES_AN_INCH;
    }
}
