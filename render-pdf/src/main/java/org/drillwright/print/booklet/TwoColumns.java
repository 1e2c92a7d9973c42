package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.page.Box;

/** Short pieces in two columns, page after page; on the last page both are about as long. */
final class TwoColumns {

    private static final int COLUMNS = 2;

    private final double apart;
    private final double step;

    /**
     * Columns of a page.
     *
     * @param apart from the left edge of one to that of the other, in points
     * @param step by which a last page grows until it holds all, in points
     */
    TwoColumns(double apart, double step) {
        this.apart = apart;
        this.step = step;
    }

    /**
     * A piece of a column.
     *
     * @param above what is blank above it, in points, unless it begins a column
     * @param leads whether it heads what is behind it, so that no column ends with it
     */
    record Piece(double above, Box box, boolean leads) {

        Piece(Box box) {
            this(0, box, false);
        }
    }

    /**
     * A box for each page.
     *
     * @param over what stands over both columns of the first page
     * @param room of a page, in points
     */
    List<Box> pages(Box over, List<Piece> pieces, double room) {
        List<Box> pages = new ArrayList<>();
        int from = 0;
        while (from < pieces.size()) {
            Box above = pages.isEmpty() ? over : Box.NONE;
            double height = height(pieces, from, room - above.height());
            List<Box> columns = new ArrayList<>();
            for (int column = 0; column < COLUMNS; column++) {
                int to = Math.max(end(pieces, from, height), column == 0 ? from + 1 : from);
                columns.add(stacked(pieces.subList(from, to)).moved(column * apart, 0));
                from = to;
            }
            pages.add(Box.stack(above, Box.abreast(columns)));
        }
        return pages;
    }

    /** The least at which the columns hold all that is left; all of the room if they do not. */
    private double height(List<Piece> pieces, int from, double room) {
        for (double height = step; height < room; height += step) {
            int at = from;
            for (int column = 0; column < COLUMNS; column++) {
                at = end(pieces, at, height);
            }
            if (at == pieces.size()) {
                return height;
            }
        }
        return room;
    }

    private static int end(List<Piece> pieces, int from, double height) {
        int to = from;
        double filled = 0;
        while (to < pieces.size()) {
            Piece piece = pieces.get(to);
            filled += (to == from ? 0 : piece.above()) + piece.box().height();
            if (filled > height) {
                break;
            }
            to++;
        }
        while (to > from && to < pieces.size() && pieces.get(to - 1).leads()) {
            to--;
        }
        return to;
    }

    private static Box stacked(List<Piece> pieces) {
        List<Box> boxes = new ArrayList<>();
        for (Piece piece : pieces) {
            boxes.add(Box.space(boxes.isEmpty() ? 0 : piece.above()));
            boxes.add(piece.box());
        }
        return Box.stack(boxes);
    }
}
