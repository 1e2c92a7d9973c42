package org.drillwright.print.layout.fit;

import org.drillwright.model.CardSize;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Millimetres;

/**
 * The places of a card, in points: an edge for the laminate to seal and the punch's ring hole in the top left corner.
 *
 * @param width of the card
 * @param height of the card
 * @param ringed whether it is worn on a ring; sheets for the wall are not
 */
public record CardArea(double width, double height, boolean ringed) {

    /** Trade primers ask for 3 to 5 mm of film to seal; 5 mm also keeps what a printer cannot reach blank. */
    public static final double EDGE = Millimetres.toPoints(5);

    /** A common punch makes a hole of 6 mm; common practice, no source. */
    public static final double HOLE = Millimetres.toPoints(6);

    /** Between the hole and the words beside it. */
    private static final double BESIDE_HOLE = Millimetres.toPoints(2);

    public static CardArea of(CardSize size) {
        return new CardArea(
                Millimetres.toPoints(size.width()), Millimetres.toPoints(size.height()), !size.isForTheWall());
    }

    public double left() {
        return EDGE;
    }

    public double right() {
        return width - EDGE;
    }

    public double top() {
        return EDGE;
    }

    public double bottom() {
        return height - EDGE;
    }

    public double inner() {
        return width - 2 * EDGE;
    }

    /** The zone of the ring hole, in which nothing is read; of no extent where there is no hole. */
    public Box hole() {
        double extent = ringed ? HOLE : 0;
        return new Box(EDGE, EDGE, extent, extent);
    }

    /** Where words beside the hole begin. */
    public double besideHole() {
        return ringed ? hole().right() + BESIDE_HOLE : EDGE;
    }
}
