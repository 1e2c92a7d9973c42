package org.drillwright.print.layout.fit;

import org.drillwright.print.frame.Millimetres;

/**
 * How small the type of sheets may be. ISO 9241-303 asks for characters that fill at least 16 minutes of arc at the eye;
 * a character's height is that of its capitals. The distances are our own choice, no source. Lengths
 * are points.
 */
public final class Legibility {

    private static final double STEPPED_UP_TO = 1000;
    private static final double BEFORE_THE_WALL = 1500;
    private static final double ACROSS_THE_HALL = 3000;
    private static final double LEAST = 16;

    private Legibility() {}

    /** What fills an angle in minutes of arc at a distance in millimetres, in points. */
    static double height(double arcMinutes, double distance) {
        return Millimetres.toPoints(2 * distance * Math.tan(Math.toRadians(arcMinutes / 60) / 2));
    }

    /** From how far capitals of a height in points are read, in millimetres. */
    public static double readFrom(double height) {
        return height / height(LEAST, 1);
    }

    /** What is read of a sheet on the wall from 3 m. */
    public static double acrossTheHall() {
        return height(LEAST, ACROSS_THE_HALL);
    }

    /** What is read of a sheet on the wall from where one stands before it. */
    public static double beforeTheWall() {
        return height(LEAST, BEFORE_THE_WALL);
    }

    /** What one steps up to read. */
    public static double steppedUpTo() {
        return height(LEAST, STEPPED_UP_TO);
    }
}
