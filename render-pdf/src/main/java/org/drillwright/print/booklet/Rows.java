package org.drillwright.print.booklet;

import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.Table;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Styled;

/** Rows of a table of small type, with rules from margin to margin. */
record Rows(Press press, Table table) {

    /** Above and below the words, as a share of the leading. */
    private static final double PAD = 0.06;

    /** Between columns, as a share of the size. */
    private static final double GAP = 0.5;

    /**
     * Columns up to the right margin.
     *
     * @param lefts where they begin, in points
     * @param heading which column heads its row
     */
    static Rows of(Press press, List<Double> lefts, int heading) {
        Type type = press.small();
        double gap = GAP * type.size();
        List<Double> widths = IntStream.range(0, lefts.size())
                .mapToObj(at -> at < lefts.size() - 1
                        ? lefts.get(at + 1) - lefts.get(at)
                        : press.grid().right() + gap - lefts.get(at))
                .toList();
        Table.Pad pad = new Table.Pad(0, gap, PAD * type.leading());
        return new Rows(press, new Table(type, lefts.get(0), widths, heading, pad));
    }

    /** The same with columns so wide that no word of some rows is broken, as far as the other columns can spare it. */
    Rows holding(List<List<Styled>> rows) {
        return new Rows(press, table.holding(rows));
    }

    /** Between a heavy rule and a thin one. */
    Box head(List<Styled> cells) {
        return Box.stack(press.rule(LineWeight.HEAVY), table.heads(cells), press.rule(LineWeight.THIN));
    }

    /** Over a thin rule. */
    Box row(List<Styled> cells) {
        return Box.stack(table.cells(cells), press.rule(LineWeight.THIN));
    }
}
