package org.drillwright.print.layout;

import org.drillwright.model.CardSize;
import org.drillwright.print.frame.Millimetres;

/**
 * How small type may be. ISO 9241-303 asks for characters that fill at least 16 minutes of arc at the eye, 20 to 22
 * preferred; a character's height is that of its capitals. The distances are our own choice, no source: a small card
 * lies in the hand, a large one hangs or is held for two to read.
 */
final class Legibility {

    private static final double IN_THE_HAND = 400;
    private static final double HELD_FOR_TWO = 700;
    private static final double PREFERRED = 20;
    private static final double LEAST = 16;

    private Legibility() {}

    /** The least height of capitals in what each partner does, in points. */
    static double turns(CardSize card) {
        return switch (card) {
            case A6, INDEX_4X6 -> height(PREFERRED, IN_THE_HAND);
            case A5 -> height(LEAST, HELD_FOR_TWO);
        };
    }

    /** The least height of capitals in distance and safety, in points. */
    static double cues() {
        return height(LEAST, IN_THE_HAND);
    }

    /** What fills an angle in minutes of arc at a distance in millimetres, in points. */
    static double height(double arcMinutes, double distance) {
        return Millimetres.toPoints(2 * distance * Math.tan(Math.toRadians(arcMinutes / 60) / 2));
    }
}
