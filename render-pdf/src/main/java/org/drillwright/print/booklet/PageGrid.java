package org.drillwright.print.booklet;

import org.drillwright.model.SheetSize;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.fit.TypeSize;

/** The pages of a booklet: half a sheet each, or a whole one with larger type. */
public record PageGrid(Grid grid, TypeSize notes) {

    private static final double MARGIN = 13;
    private static final double TOP = 10;
    private static final double BOTTOM = 9;
    private static final double NUMBER = 10;
    private static final double PICTURE = 36;
    private static final TypeSize NOTES = new TypeSize(9.5, 12.5);

    /** Of the larger type, and of all that stands around it. */
    private static final double LARGER = 1.2;

    /** Pages that a sheet holds two of, side by side, for folding: A5 on A4, half-letter on letter. */
    public static PageGrid half(SheetSize sheet) {
        return of(sheet.height() / 2, sheet.width(), sheet == SheetSize.A3 ? LARGER : 1);
    }

    public static PageGrid whole(SheetSize sheet) {
        return of(sheet.width(), sheet.height(), LARGER);
    }

    private static PageGrid of(double width, double height, double times) {
        Grid grid = new Grid(
                Millimetres.toPoints(width),
                Millimetres.toPoints(height),
                0,
                times > 1 ? Scale.LARGE_PAGE : Scale.PAGE,
                Millimetres.toPoints(times * MARGIN),
                Millimetres.toPoints(times * TOP),
                Millimetres.toPoints(height - times * BOTTOM),
                Millimetres.toPoints(times * NUMBER),
                Millimetres.toPoints(times * PICTURE));
        return new PageGrid(grid, new TypeSize(times * NOTES.size(), times * NOTES.leading()));
    }
}
