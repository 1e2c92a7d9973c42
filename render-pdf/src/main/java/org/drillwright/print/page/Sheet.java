package org.drillwright.print.page;

import java.util.List;
import org.drillwright.model.SheetSize;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Millimetres;

/**
 * A page and its margin, in points.
 *
 * @param margin on all sides; wide enough for a staple and for any office printer
 */
public record Sheet(double width, double height, double margin) {

    private static final double MARGIN = Millimetres.toPoints(15);

    public static Sheet upright(SheetSize size) {
        return new Sheet(Millimetres.toPoints(size.width()), Millimetres.toPoints(size.height()), MARGIN);
    }

    /** Between the margins. */
    public double inner() {
        return width - 2 * margin;
    }

    public double bottom() {
        return height - margin;
    }

    /** A page on which nothing stands. */
    public Frame blank() {
        return new Frame(width, height, margin, List.of(), List.of());
    }
}
