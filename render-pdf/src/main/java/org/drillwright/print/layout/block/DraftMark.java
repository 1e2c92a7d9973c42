package org.drillwright.print.layout.block;

import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.text.Typefaces;

/** The word for a draft, from corner to corner behind all else, so light that what stands on it reads well. */
public final class DraftMark {

    /** Black on this has a contrast of about 12 to 1. */
    public static final Ink INK = new Ink(0.78);

    /** The word's length, as a share of the diagonal. */
    private static final double LENGTH = 0.72;

    private DraftMark() {}

    public static Mark across(Grid grid, String word, Typefaces faces) {
        double width = grid.inner();
        double height = grid.bottom() - grid.top();
        double diagonal = Math.hypot(width, height);
        double size = LENGTH * diagonal / faces.of(Face.BOLD).width(word);
        double angle = Math.atan2(height, width);
        double back = LENGTH * diagonal / 2;
        double down = faces.of(Face.BOLD).capHeight() * size / 2;
        double x = grid.width() / 2 - back * Math.cos(angle) + down * Math.sin(angle);
        double y = grid.height() / 2 + back * Math.sin(angle) + down * Math.cos(angle);
        return new Mark.Text(x, y, size, Face.BOLD, word, INK, Math.toDegrees(angle));
    }
}
