package org.drillwright.print.page;

import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;

/** How heavy a ruled line is. Lengths are points. */
public enum LineWeight {
    /** Between parts of what belongs together. */
    THIN(0.5),
    /** Where something begins and ends. */
    HEAVY(1.5);

    private final double width;

    LineWeight(double width) {
        this.width = width;
    }

    public double width() {
        return width;
    }

    public Mark across(double left, double right, double y) {
        return new Mark.Line(left, y, right, y, width, Ink.BLACK);
    }

    public Mark down(double x, double top, double bottom) {
        return new Mark.Line(x, top, x, bottom, width, Ink.BLACK);
    }
}
