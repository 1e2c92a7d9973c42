package org.drillwright.print.layout.fit;

import org.drillwright.model.CardSize;
import org.drillwright.print.frame.Face;
import org.drillwright.print.text.Typefaces;

/**
 * All sizes of type on a card, in points, following from one.
 *
 * @param turn the size of what each partner does
 * @param name the title's size, as a share of that
 */
public record Scale(double turn, double name) {

    /** A numeral's height is twice that of the words beside it, and a little, to stand out at arm's length. */
    private static final double NUMERAL = 2.1;

    private static final double TITLE = 1.3;
    private static final double CUE = 0.82;
    private static final double HEAD = 0.74;
    private static final double FOOT = 0.62;

    /** Beyond this the type of a short drill would shout. */
    private static final double LARGEST = 1.7;

    private static final double STEP = 0.125;

    /** The smallest that may still be read. */
    public static Scale floor(CardSize card, Typefaces faces) {
        Legibility least = Legibility.of(card);
        double height = Math.max(least.turns(), Math.max(least.cues() / CUE, least.numerals() / NUMERAL));
        return new Scale(height / faces.of(Face.REGULAR).capHeight(), Math.max(TITLE, least.names() / height));
    }

    /** How many scales there are above the floor. */
    public int steps() {
        return (int) ((LARGEST - 1) * turn / STEP);
    }

    /** How many steps lead to a size, or just below it. */
    public int stepsTo(double size) {
        return (int) Math.floor((size - turn) / STEP);
    }

    public Scale larger(int steps) {
        return new Scale(turn + steps * STEP, name);
    }

    public double numeral() {
        return NUMERAL * turn;
    }

    public double title() {
        return name * turn;
    }

    /** Distance and safety, and what is read before the first count and after the last. */
    public double cue() {
        return CUE * turn;
    }

    public double head() {
        return HEAD * turn;
    }

    public double foot() {
        return FOOT * turn;
    }
}
