package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Setting;

/**
 * The columns of a table.
 *
 * @param widths in points
 * @param pad over and under the words, and beside them
 */
record Columns(Type type, List<Double> widths, double pad) {

    Columns {
        widths = List.copyOf(widths);
    }

    /** Columns whose widths are shares of a whole. */
    static Columns shared(Type type, double whole, double... shares) {
        double sum = Arrays.stream(shares).sum();
        return new Columns(
                type,
                Arrays.stream(shares).mapToObj(share -> whole * share / sum).toList(),
                0.25 * type.size());
    }

    Piece head(List<String> cells) {
        return row(cells, Role.COLUMN_HEAD, Role.COLUMN_HEAD, Face.BOLD, Face.BOLD, true);
    }

    /** A row whose first cell heads it. */
    Piece row(List<String> cells, boolean band) {
        return row(cells, Role.ROW_HEAD, Role.CELL, Face.BOLD, Face.REGULAR, band);
    }

    private Piece row(List<String> cells, Role first, Role others, Face firstFace, Face otherFace, boolean band) {
        List<Node> nodes = new ArrayList<>();
        double height = 0;
        boolean whole = true;
        double x = 0;
        for (int at = 0; at < cells.size(); at++) {
            Setting set =
                    type.set(at == 0 ? firstFace : otherFace, cells.get(at), x + pad, pad, widths.get(at) - 2 * pad);
            nodes.add(new Node.Words(at == 0 ? first : others, set.lines()));
            height = Math.max(height, set.height() + 2 * pad);
            whole &= set.broken().isEmpty();
            x += widths.get(at);
        }
        List<Mark> marks =
                band ? List.of(Mark.Shape.filled(Outline.box(new Box(0, 0, x, height)), Type.BAND)) : List.of();
        return new Piece(height, marks, List.of(new Node.Group(Role.ROW, nodes)), whole);
    }
}
