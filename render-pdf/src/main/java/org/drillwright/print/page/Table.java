package org.drillwright.print.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;

/**
 * The columns of a table. Lengths are points.
 *
 * @param left where the first begins
 * @param heading which column heads its row
 */
public record Table(Type type, double left, List<Double> widths, int heading, Pad pad) {

    /**
     * What stays blank around the words of a cell.
     *
     * @param level above and below them
     */
    public record Pad(double before, double behind, double level) {}

    private static final double PAD = 0.3;

    /** What rounding may take away. */
    private static final double HAIR = 0.01;

    public Table {
        widths = List.copyOf(widths);
    }

    /** Columns whose widths are shares of a whole. */
    public static Table shared(Type type, double whole, int heading, double... shares) {
        double sum = Arrays.stream(shares).sum();
        double pad = PAD * type.size();
        return new Table(
                type,
                0,
                Arrays.stream(shares).mapToObj(share -> whole * share / sum).toList(),
                heading,
                new Pad(pad, pad, pad));
    }

    /** The same with columns so wide that no word of a head and of rows is broken, as far as the other columns can spare it. */
    public Table holding(List<String> head, List<List<String>> rows) {
        return holding(Stream.concat(
                        Stream.of(styled(head, true)), rows.stream().map(row -> styled(row, false)))
                .toList());
    }

    /** The same of rows in type of their own. */
    public Table holding(List<List<Styled>> rows) {
        List<Double> least = new ArrayList<>();
        for (int at = 0; at < widths.size(); at++) {
            int column = at;
            double words = rows.stream()
                    .mapToDouble(row -> words(row.get(column)).widestWord())
                    .max()
                    .orElse(0);
            least.add(words * type.size() + pad.before() + pad.behind() + HAIR);
        }
        return new Table(type, left, Widths.holding(widths, least), heading, pad);
    }

    private Paragraph words(Styled cell) {
        return Paragraph.of(type.faces(), List.of(cell));
    }

    private List<Styled> styled(List<String> cells, boolean head) {
        return IntStream.range(0, cells.size())
                .mapToObj(at -> new Styled(cells.get(at), head || at == heading ? Face.BOLD : Face.REGULAR))
                .toList();
    }

    /** In bold, over a heavy rule. */
    public Box head(List<String> cells) {
        return over(LineWeight.HEAVY, heads(styled(cells, true)));
    }

    /** Over a thin rule. */
    public Box row(List<String> cells) {
        return over(LineWeight.THIN, cells(styled(cells, false)));
    }

    private Box over(LineWeight rule, Box row) {
        double right = left + widths.stream().mapToDouble(Double::doubleValue).sum();
        return row.on(rule.across(left, right, row.height()));
    }

    /** The heads of the columns, without rules. */
    public Box heads(List<Styled> cells) {
        return set(cells, true);
    }

    /** A row without rules. */
    public Box cells(List<Styled> cells) {
        return set(cells, false);
    }

    private Box set(List<Styled> cells, boolean head) {
        List<Node> nodes = new ArrayList<>();
        double height = type.leading();
        double x = left;
        for (int at = 0; at < cells.size(); at++) {
            double room = widths.get(at) - pad.before() - pad.behind();
            SetText set = type.set(words(cells.get(at)), x + pad.before(), pad.level(), room);
            nodes.add(set.as(head ? Role.COLUMN_HEAD : at == heading ? Role.ROW_HEAD : Role.CELL));
            height = Math.max(height, set.height());
            x += widths.get(at);
        }
        return Box.of(height + 2 * pad.level(), new Node.Group(Role.ROW, nodes));
    }
}
