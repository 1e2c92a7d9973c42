package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.block.SetText;
import org.drillwright.print.layout.block.Slab;
import org.drillwright.print.layout.fit.TypeSize;
import org.drillwright.print.page.Widths;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;

/**
 * Rows of a table of small type, from margin to margin.
 *
 * @param lefts where its columns begin, in points
 * @param heading which column heads its row
 */
record Rows(Press press, List<Double> lefts, int heading) {

    /** Above and below the words, as a share of the leading. */
    private static final double PAD = 0.06;

    /** Between columns, as a share of the size. */
    private static final double GAP = 0.5;

    /** What rounding may take away, as a share of the size. */
    private static final double HAIR = 0.001;

    Rows {
        lefts = List.copyOf(lefts);
    }

    /** Columns so wide that no word of some rows is broken, as far as the other columns can spare it. */
    static Rows holding(Press press, List<Double> lefts, int heading, List<List<Styled>> rows) {
        double size = press.scale().small().size();
        List<Double> widths = new ArrayList<>();
        List<Double> least = new ArrayList<>();
        for (int at = 0; at < lefts.size(); at++) {
            int column = at;
            double end =
                    at < lefts.size() - 1 ? lefts.get(at + 1) : press.grid().right();
            double gap = at < lefts.size() - 1 ? GAP + HAIR : HAIR;
            widths.add(end - lefts.get(at));
            least.add(size
                    * (gap
                            + rows.stream()
                                    .map(row -> Paragraph.of(press.faces(), List.of(row.get(column))))
                                    .mapToDouble(Paragraph::widestWord)
                                    .max()
                                    .orElse(0)));
        }
        List<Double> held = new ArrayList<>();
        double left = lefts.get(0);
        for (double width : Widths.holding(widths, least)) {
            held.add(left);
            left += width;
        }
        return new Rows(press, held, heading);
    }

    /** Between a heavy rule and a thin one. */
    Slab head(List<Styled> cells) {
        return Slab.stack(List.of(press.rule(Press.HEAVY), set(true, cells), press.rule(Press.THIN)));
    }

    /** Over a thin rule. */
    Slab row(List<Styled> cells) {
        return Slab.stack(List.of(set(false, cells), press.rule(Press.THIN)));
    }

    Slab table(List<Slab> rows) {
        Slab all = Slab.stack(rows);
        return new Slab(all.height(), all.backdrop(), List.of(new Node.Group(Role.TABLE, all.content())), all.broken());
    }

    private Slab set(boolean head, List<Styled> cells) {
        TypeSize type = press.scale().small();
        double pad = PAD * type.leading();
        List<Node> nodes = new ArrayList<>();
        double height = type.leading();
        for (int at = 0; at < cells.size(); at++) {
            double end = at < lefts.size() - 1
                    ? lefts.get(at + 1) - GAP * type.size()
                    : press.grid().right();
            Paragraph words = Paragraph.of(press.faces(), List.of(cells.get(at)));
            SetText set = press.running(words, type, lefts.get(at), pad, end - lefts.get(at));
            nodes.add(new Node.Words(head ? Role.COLUMN_HEAD : at == heading ? Role.ROW_HEAD : Role.CELL, set.lines()));
            height = Math.max(height, set.height());
        }
        return new Slab(height + 2 * pad, List.of(), List.of(new Node.Group(Role.ROW, nodes)), List.of());
    }
}
