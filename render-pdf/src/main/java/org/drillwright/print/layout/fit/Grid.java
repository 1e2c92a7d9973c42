package org.drillwright.print.layout.fit;

import org.drillwright.model.CardSize;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Rectangle;

/**
 * Where things stand on one side of paper, in points: margin, number, sign, words, gap, picture, margin. What is read
 * begins on one axis, between number and sign; left of it stand only the numbers and the hole for the ring.
 *
 * @param punch how wide the hole is that goes through a corner; 0 if there is none
 * @param scale of the type
 * @param margin at both sides
 * @param top where the first line begins
 * @param bottom where the foot ends
 * @param number how wide the column of numbers is
 * @param picture how wide the column of pictures is
 */
public record Grid(
        double width,
        double height,
        double punch,
        Scale scale,
        double margin,
        double top,
        double bottom,
        double number,
        double picture) {

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
        Scale scale = Scale.of(card);
        double height = Millimetres.toPoints(card.height());
        double edge = Millimetres.toPoints(margin);
        return new Grid(
                Millimetres.toPoints(card.width()),
                height,
                card.isForTheWall() ? 0 : scale == Scale.POCKET ? POCKET_HOLE : HOLE,
                scale,
                edge,
                edge,
                height - Math.max(FOOT_AT_LEAST, FOOT * edge),
                Millimetres.toPoints(number),
                Millimetres.toPoints(picture));
    }

    /** The same paper for who sees badly: all type one scale larger. */
    public Grid inLargePrint() {
        return with(scale.larger(), number, picture);
    }

    /** For drills in which only one stands in the picture: the words gain what the picture does not need. */
    public Grid forOne() {
        return with(scale, number, ALONE * picture);
    }

    /** With room for numbers so wide, if they are wider than usual. */
    public Grid forNumbers(double wide) {
        return with(scale, Math.max(number, wide), picture);
    }

    private Grid with(Scale otherScale, double otherNumber, double otherPicture) {
        return new Grid(width, height, punch, otherScale, margin, top, bottom, otherNumber, otherPicture);
    }

    public double left() {
        return margin;
    }

    public double right() {
        return width - margin;
    }

    public double inner() {
        return width - 2 * margin;
    }

    /** How wide an edge all round stays blank. */
    public double clear() {
        return Math.min(Math.min(margin, top), height - bottom);
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
        return punch > 0;
    }

    /** What the punch takes away in front: the corner between the margins; of no extent where there is no ring. */
    public Rectangle hole() {
        return new Rectangle(margin, top, punch, punch);
    }

    /** The same hole seen from behind. */
    public Rectangle holeBehind() {
        Rectangle front = hole();
        return new Rectangle(width - front.right(), front.y(), front.width(), front.height());
    }
}
