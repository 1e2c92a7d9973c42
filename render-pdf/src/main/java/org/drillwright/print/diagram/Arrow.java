package org.drillwright.print.diagram;

import java.util.List;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;

/** A straight arrow on a white ground from one line to another. */
final class Arrow {

    private static final double FROM = 9;
    private static final double SHAFT = 2.4;
    private static final double HEAD = 7;

    private Arrow() {}

    /** From beside the middle of one area to the middle of another. */
    static List<Mark> between(Pad pad, Area from, Area to) {
        double length = Math.hypot(to.middleX() - from.middleX(), to.middleY() - from.middleY());
        double dx = (to.middleX() - from.middleX()) / length;
        double dy = (to.middleY() - from.middleY()) / length;
        double tipX = to.middleX() + 3 * dx;
        double tipY = to.middleY() + 3 * dy;
        double neckX = tipX - HEAD * dx;
        double neckY = tipY - HEAD * dy;
        double startX = from.middleX() + FROM * dx;
        double startY = from.middleY() + FROM * dy;
        return List.of(
                white(pad, startX, startY, neckX, neckY),
                pad.filled(Ink.WHITE, head(tipX + 2.5 * dx, tipY + 2.5 * dy, dx, dy, HEAD + 4)),
                pad.line(startX, startY, neckX, neckY, SHAFT),
                pad.filled(Ink.BLACK, head(tipX, tipY, dx, dy, HEAD)));
    }

    private static Mark white(Pad pad, double x1, double y1, double x2, double y2) {
        Mark.Line line = (Mark.Line) pad.line(x1, y1, x2, y2, SHAFT + 3.6);
        return new Mark.Line(line.x1(), line.y1(), line.x2(), line.y2(), line.width(), Ink.WHITE);
    }

    private static double[] head(double tipX, double tipY, double dx, double dy, double size) {
        double wide = 0.62 * size;
        return new double[] {
            tipX,
            tipY,
            tipX - size * dx - wide * dy,
            tipY - size * dy + wide * dx,
            tipX - size * dx + wide * dy,
            tipY - size * dy - wide * dx
        };
    }
}
