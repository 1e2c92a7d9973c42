package org.drillwright.print.frame;

/**
 * A grey.
 *
 * @param lightness from 0, black, to 1, white (sRGB)
 */
public record Ink(double lightness) {

    public static final Ink BLACK = new Ink(0);
    public static final Ink WHITE = new Ink(1);

    public Ink {
        if (!(lightness >= 0 && lightness <= 1)) {
            throw new IllegalArgumentException("lightness " + lightness + " is not between 0 and 1");
        }
    }
}
