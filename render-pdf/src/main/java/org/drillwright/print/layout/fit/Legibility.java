package org.drillwright.print.layout.fit;

import org.drillwright.model.CardSize;
import org.drillwright.print.frame.Millimetres;

/**
 * How small type may be. ISO 9241-303 asks for characters that fill at least 16 minutes of arc at the eye, 20 to 22
 * preferred; a character's height is that of its capitals. The distances are our own choice, no source: a small card
 * lies in the hand, an A5 hangs on a ring or is held for two to read, a wall sheet is read from where a pair stands.
 * Lengths are points.
 *
 * @param numerals the least height of the numbers of the counts
 * @param names the least height of the title
 * @param turns the least height of capitals in what each partner does
 * @param cues the least height of capitals in distance and safety
 */
public record Legibility(double numerals, double names, double turns, double cues) {

    private static final double IN_THE_HAND = 400;
    private static final double HELD_FOR_TWO = 700;
    private static final double STEPPED_UP_TO = 1000;
    private static final double BEFORE_THE_WALL = 1500;
    private static final double ACROSS_THE_HALL = 3000;
    private static final double PREFERRED = 20;
    private static final double LEAST = 16;

    public static Legibility of(CardSize card) {
        double hand = height(PREFERRED, IN_THE_HAND);
        double ring = height(LEAST, HELD_FOR_TWO);
        double wall = height(LEAST, ACROSS_THE_HALL);
        return switch (card) {
            case A7, INDEX_3X5, INDEX_4X6, A6, INDEX_5X8 ->
                new Legibility(hand, hand, hand, height(LEAST, IN_THE_HAND));
            case A5 -> new Legibility(ring, ring, ring, height(LEAST, IN_THE_HAND));
            case WALL_A4, WALL_A3 ->
                new Legibility(wall, wall, height(LEAST, BEFORE_THE_WALL), height(LEAST, STEPPED_UP_TO));
        };
    }

    /** What fills an angle in minutes of arc at a distance in millimetres, in points. */
    static double height(double arcMinutes, double distance) {
        return Millimetres.toPoints(2 * distance * Math.tan(Math.toRadians(arcMinutes / 60) / 2));
    }

    /** What is read of a sheet in the hand. */
    public static double inTheHand() {
        return height(PREFERRED, IN_THE_HAND);
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
