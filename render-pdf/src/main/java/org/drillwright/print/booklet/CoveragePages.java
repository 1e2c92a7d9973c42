package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.explain.SetWork;
import org.drillwright.explain.SetWork.Item;
import org.drillwright.explain.SetWork.Theme;
import org.drillwright.print.diagram.Said;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Block;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Table;
import org.drillwright.print.page.Type;

/**
 * What the drills of each set work: a row for each thing, a bar in it for each set. The bars are drawn behind the numbers
 * of a table, so that who cannot see them loses nothing.
 *
 * @param sets by name, in their order; the whole school is the last
 * @param sizes how many drills each has
 */
record CoveragePages(Map<String, SetWork> sets, Map<String, Integer> sizes, Type type, double width, Labels labels) {

    private static final Ink BAR = new Ink(0.72);

    CoveragePages {
        sets = new LinkedHashMap<>(sets);
        sizes = Map.copyOf(sizes);
    }

    void lay(Flow flow) {
        flow.turn();
        flow.add(type.times(1.6).title(labels.text(Label.COVERAGE_TITLE), width));
        flow.add(type.paragraph(Face.REGULAR, labels.text(Label.COVERAGE_HOW), width));
        double[] shares = new double[sets.size() + 1];
        Arrays.fill(shares, 2.4);
        shares[0] = 5;
        Table table = Table.shared(type.times(0.88), width, 0, shares);
        for (Theme theme : Theme.values()) {
            List<Block> rows = new ArrayList<>();
            for (Item item : last().of(theme)) {
                rows.add(row(theme, item, table));
            }
            flow.table(table.head(heads(theme)), rows);
            flow.add(Block.space(0.6 * type.size()));
        }
        never(flow);
    }

    private SetWork last() {
        return sets.values().stream().reduce((one, other) -> other).orElseThrow();
    }

    private List<String> heads(Theme theme) {
        return Stream.concat(Stream.of(labels.text(label(theme))), sets.keySet().stream())
                .toList();
    }

    private Block row(Theme theme, Item item, Table table) {
        List<String> cells = new ArrayList<>(List.of(said(theme, item)));
        List<Mark> bars = new ArrayList<>();
        double x = table.widths().get(0);
        int column = 1;
        for (Map.Entry<String, SetWork> set : sets.entrySet()) {
            int drills = of(set.getValue(), theme, item.key());
            int all = sizes.getOrDefault(set.getKey(), 0);
            cells.add(drills == 0 ? "–" : labels.text(Label.ONE_OF, drills, all));
            double whole = table.widths().get(column++);
            if (drills > 0) {
                bars.add(bar(x, (whole - type.size()) * drills / all));
            }
            x += whole;
        }
        Block row = table.row(cells);
        return new Block(
                row.height(), Stream.concat(bars.stream(), row.marks().stream()).toList(), row.nodes());
    }

    private Mark bar(double x, double length) {
        double pad = 0.15 * type.size();
        return Mark.Shape.filled(Outline.box(new Box(x, pad, length, 1.35 * type.size())), BAR);
    }

    /** What no drill of the school works, by name. */
    private void never(Flow flow) {
        for (Theme theme : Theme.values()) {
            List<Item> items = last().never(theme);
            if (!items.isEmpty()) {
                String named = items.stream().map(item -> said(theme, item)).collect(Collectors.joining(", "));
                flow.add(
                        type.labelled(labels.text(Label.NEVER) + "\u00A0· " + labels.text(label(theme)), named, width));
            }
        }
    }

    private static int of(SetWork work, Theme theme, String key) {
        return work.of(theme).stream()
                .filter(item -> item.key().equals(key))
                .mapToInt(item -> item.drills().size())
                .findFirst()
                .orElse(0);
    }

    private static Label label(Theme theme) {
        return switch (theme) {
            case FUNDAMENTALS -> Label.FUNDAMENTALS;
            case LINES -> Label.LINES;
            case PARRIES -> Label.PARRIES;
            case MEASURES -> Label.MEASURES;
            case HANDS -> Label.HANDS;
        };
    }

    private String said(Theme theme, Item item) {
        return switch (theme) {
            case FUNDAMENTALS -> item.words();
            case LINES -> Said.line(item.key(), labels.language());
            case PARRIES -> Said.position(item.key(), labels.language());
            case MEASURES -> Said.measure(item.key(), labels.language());
            case HANDS -> labels.text(item.key().equals("same") ? Label.HANDS_SAME : Label.HANDS_OPPOSITE);
        };
    }
}
