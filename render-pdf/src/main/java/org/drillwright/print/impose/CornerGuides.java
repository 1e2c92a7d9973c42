package org.drillwright.print.impose;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Rectangle;

/** Where to round the corners of what is cut out, by eye or with a punch: a short stroke across each corner. */
final class CornerGuides {

    /** ISO/IEC 7810 rounds the corners of identity cards by 2.88 to 3.48 mm. */
    static final double RADIUS = Millimetres.toPoints(3);

    /** From the corner to where the stroke meets the edges: it touches the arc that is inscribed in the corner. */
    static final double LEG = RADIUS * (2 - Math.sqrt(2));

    private static final double WIDTH = 0.25;

    private final Rectangle printable;

    /** @param printable beyond which no printer reaches */
    CornerGuides(Rectangle printable) {
        this.printable = printable;
    }

    List<Mark> marks(List<Rectangle> pieces) {
        List<Mark> marks = new ArrayList<>();
        for (Rectangle piece : pieces) {
            corner(piece.x(), piece.y(), 1, 1, marks);
            corner(piece.right(), piece.y(), -1, 1, marks);
            corner(piece.right(), piece.bottom(), -1, -1, marks);
            corner(piece.x(), piece.bottom(), 1, -1, marks);
        }
        return marks;
    }

    private void corner(double x, double y, int right, int down, List<Mark> marks) {
        double inX = x + right * LEG;
        double inY = y + down * LEG;
        if (reached(x, y) && reached(inX, inY)) {
            marks.add(new Mark.Line(x, inY, inX, y, WIDTH, Ink.BLACK));
        }
    }

    private boolean reached(double x, double y) {
        return x >= printable.x() && x <= printable.right() && y >= printable.y() && y <= printable.bottom();
    }
}
