package org.drillwright.print.sheet;

import org.drillwright.model.SheetSize;
import org.drillwright.print.frame.Millimetres;

/**
 * A page and its margin, in points.
 *
 * @param margin wide enough for any office printer
 */
public record Paper(double width, double height, double margin) {

    private static final double MARGIN = Millimetres.toPoints(10);

    public static Paper upright(SheetSize size) {
        return new Paper(Millimetres.toPoints(size.width()), Millimetres.toPoints(size.height()), MARGIN);
    }

    public static Paper lying(SheetSize size) {
        return new Paper(Millimetres.toPoints(size.height()), Millimetres.toPoints(size.width()), MARGIN);
    }

    double inner() {
        return width - 2 * margin;
    }

    double bottom() {
        return height - margin;
    }
}
