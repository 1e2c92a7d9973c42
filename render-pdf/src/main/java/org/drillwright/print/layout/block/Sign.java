package org.drillwright.print.layout.block;

import java.util.List;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Outline;

/**
 * The sign of safety: a triangle with a bar and a dot, told by its shape on any photocopy.
 *
 * @param width that it takes before the words, in points
 */
record Sign(double width, List<Mark> marks) {

    /** A sign as high as the capitals of the first line of a column. */
    static Sign before(double x, double top, double size, Ink body, Ink bar) {
        double height = 0.8 * size;
        double side = 0.92 * size;
        double base = top + 0.94 * size;
        double middle = x + side / 2;
        return new Sign(
                side + 0.35 * size,
                List.of(
                        Mark.Shape.filled(Outline.polygon(x, base, x + side, base, middle, base - height), body),
                        new Mark.Line(middle, base - 0.62 * height, middle, base - 0.32 * height, 0.13 * size, bar),
                        new Mark.Line(middle, base - 0.22 * height, middle, base - 0.08 * height, 0.13 * size, bar)));
    }
}
