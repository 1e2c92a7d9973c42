package org.drillwright.print.layout.fit;

import org.drillwright.model.CardSize;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Millimetres;

/**
 * Where things stand on a card, in points: margin, number, sign, words, gap, picture, margin. What is read begins on one
 * axis, between number and sign; left of it stand only the numbers and the hole for the ring.
 *
 * @param card whose paper it is
 * @param scale of its type
 * @param margin at the top and at both sides
 * @param number how wide the column of numbers is
 * @param picture how wide the column of pictures is
 */
public record Grid(CardSize card, Scale scale, double margin, double number, double picture) {

    /** A sign and the room behind it, as a share of the turns' size. */
    private static final double SIGN = 1.15;

    /** Before the pictures, as a share of the small size. */
    private static final double GAP = 0.7;

    /** One person takes less room than two. */
    private static final double ALONE = 20 / 28.0;

    /** The foot may stand nearer to the edge than the rest, as a share of the margin. */
    private static final double FOOT = 0.8;

    private static final double FOOT_AT_LEAST = Millimetres.toPoints(4);

    /** Common punches make holes of 6 and 5.5 mm; common practice, no source. */
    private static final double HOLE = Millimetres.toPoints(6);

    private static final double POCKET_HOLE = Millimetres.toPoints(5.5);

    public static Grid of(CardSize card) {
        return switch (card) {
            case A7 -> millimetres(card, 4, 8, 21);
            case INDEX_3X5 -> millimetres(card, 4, 8, 22);
            case A6 -> millimetres(card, 5, 9, 28);
            case INDEX_4X6 -> millimetres(card, 5, 9, 28);
            case QUARTER_LETTER -> millimetres(card, 5, 9, 26);
            case A5 -> millimetres(card, 8, 13, 40);
            case INDEX_5X8 -> millimetres(card, 8, 13, 34);
            case HALF_LETTER -> millimetres(card, 8, 13, 38);
            case WALL_A4 -> millimetres(card, 10, 18, 54);
            case WALL_A3 -> millimetres(card, 12, 25, 72);
        };
    }

    private static Grid millimetres(CardSize card, double margin, double number, double picture) {
        return new Grid(
                card,
                Scale.of(card),
                Millimetres.toPoints(margin),
                Millimetres.toPoints(number),
                Millimetres.toPoints(picture));
    }

    /** The same paper for who sees badly: all type one scale larger. */
    public Grid inLargePrint() {
        return new Grid(card, scale.larger(), margin, number, picture);
    }

    /** For drills in which only one stands in the picture: the words gain what the picture does not need. */
    public Grid forOne() {
        return new Grid(card, scale, margin, number, ALONE * picture);
    }

    /** With room for numbers so wide, if they are wider than usual. */
    public Grid forNumbers(double width) {
        return new Grid(card, scale, margin, Math.max(number, width), picture);
    }

    public double width() {
        return Millimetres.toPoints(card.width());
    }

    public double height() {
        return Millimetres.toPoints(card.height());
    }

    public double left() {
        return margin;
    }

    public double right() {
        return width() - margin;
    }

    public double inner() {
        return width() - 2 * margin;
    }

    public double top() {
        return margin;
    }

    /** Where the foot ends. */
    public double bottom() {
        return height() - Math.max(FOOT_AT_LEAST, FOOT * margin);
    }

    /** How wide an edge all round stays blank. */
    public double clear() {
        return Math.min(margin, height() - bottom());
    }

    /** Where all that is read begins. */
    public double axis() {
        return margin + number;
    }

    /** From the axis to the right margin. */
    public double besideNumbers() {
        return right() - axis();
    }

    /** Where words behind a sign begin. */
    public double words() {
        return axis() + SIGN * scale.turns().size();
    }

    /** How wide the turns' words may be. */
    public double wordsWidth() {
        return pictures() - GAP * scale.small().size() - words();
    }

    /** Where pictures begin. */
    public double pictures() {
        return right() - picture;
    }

    /** Whether it is worn on a ring; sheets for the wall are not. */
    public boolean isRinged() {
        return !card.isForTheWall();
    }

    /** What the punch takes away in front: the corner between the margins; of no extent where there is no ring. */
    public Box hole() {
        double extent = !isRinged() ? 0 : Scale.of(card) == Scale.POCKET ? POCKET_HOLE : HOLE;
        return new Box(margin, margin, extent, extent);
    }

    /** The same hole seen from behind. */
    public Box holeBehind() {
        Box front = hole();
        return new Box(width() - front.right(), front.y(), front.width(), front.height());
    }
}
