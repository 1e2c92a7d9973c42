package org.drillwright.print.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.SetText;

/**
 * The columns of a table.
 *
 * @param widths in points
 * @param heading which column heads its row
 */
public record Table(Type type, List<Double> widths, int heading) {

    private static final double PAD = 0.3;

    /** What rounding may take away, in points. */
    private static final double HAIR = 0.01;

    public Table {
        widths = List.copyOf(widths);
    }

    /** Columns whose widths are shares of a whole. */
    public static Table shared(Type type, double whole, int heading, double... shares) {
        double sum = Arrays.stream(shares).sum();
        return new Table(
                type,
                Arrays.stream(shares).mapToObj(share -> whole * share / sum).toList(),
                heading);
    }

    /** The same with columns so wide that no word of a head and of rows is broken, as far as the other columns can spare it. */
    public Table holding(List<String> head, List<List<String>> rows) {
        List<Double> least = new ArrayList<>();
        for (int at = 0; at < widths.size(); at++) {
            int column = at;
            double words = rows.stream()
                    .mapToDouble(row -> type.widestWord(face(column, false), row.get(column)))
                    .max()
                    .orElse(0);
            least.add(Math.max(words, type.widestWord(Face.BOLD, head.get(at))) + 2 * PAD * type.size() + HAIR);
        }
        return new Table(type, Widths.holding(widths, least), heading);
    }

    private Face face(int at, boolean head) {
        return head || at == heading ? Face.BOLD : Face.REGULAR;
    }

    private double width() {
        return widths.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** In bold, over a heavy rule. */
    public Block head(List<String> cells) {
        Block row = row(cells, true);
        Mark rule = new Mark.Line(0, row.height(), width(), row.height(), 1.5, Ink.BLACK);
        return new Block(row.height(), List.of(rule), row.nodes());
    }

    /** Over a thin rule. */
    public Block row(List<String> cells) {
        Block row = row(cells, false);
        Mark rule = new Mark.Line(0, row.height(), width(), row.height(), 0.5, Ink.BLACK);
        return new Block(row.height(), List.of(rule), row.nodes());
    }

    private Block row(List<String> cells, boolean head) {
        List<Node> nodes = new ArrayList<>();
        double pad = PAD * type.size();
        double height = SetText.LEADING * type.size();
        double x = 0;
        for (int at = 0; at < cells.size(); at++) {
            SetText set = type.set(face(at, head), cells.get(at), x + pad, pad, widths.get(at) - 2 * pad);
            nodes.add(new Node.Words(role(at, head), set.lines()));
            height = Math.max(height, set.height());
            x += widths.get(at);
        }
        return new Block(height + 2 * pad, List.of(), List.of(new Node.Group(Role.ROW, nodes)));
    }

    private Role role(int at, boolean head) {
        if (head) {
            return Role.COLUMN_HEAD;
        }
        return at == heading ? Role.ROW_HEAD : Role.CELL;
    }
}
