package org.drillwright.print.booklet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.explain.SetWork;
import org.drillwright.explain.SetWork.Item;
import org.drillwright.explain.SetWork.Theme;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.fit.Grid;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Flow;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;

/**
 * What the drills of each set work: a row for each thing, in it how many drills of each set.
 *
 * @param sets by name, in their order; the whole school is the last
 * @param sizes how many drills each has
 */
record CoveragePages(Map<String, SetWork> sets, Map<String, Integer> sizes, Press press, Labels labels) {

    /** Of the first column at least, as a share of the line. */
    private static final double NAMES = 0.3;

    CoveragePages {
        sets = new LinkedHashMap<>(sets);
        sizes = Map.copyOf(sizes);
    }

    void lay(BookletPages into) {
        String name = labels.text(Label.COVERAGE_TITLE);
        Flow flow = into.flow(name)
                .add(Box.stack(
                        into.title(name),
                        press.space(0.35),
                        press.paragraph(
                                press.words(Face.REGULAR, labels.text(Label.COVERAGE_HOW)),
                                press.grid().left()),
                        press.space(0.5)));
        pieces(into.room()).forEach(flow::add);
        into.add(flow);
    }

    /** A table for each theme, in parts where a page is too short for it, and what is never worked. */
    private List<Box> pieces(double room) {
        List<Box> pieces = new ArrayList<>();
        Rows rows = Rows.of(press, lefts(), 0);
        Box below = press.space(0.7);
        for (Theme theme : Theme.values()) {
            Box head = rows.head(heads(theme));
            List<Box> table = new ArrayList<>(List.of(head));
            double left = room - below.height() - head.height();
            for (Item item : last().of(theme)) {
                Box row = rows.row(row(theme, item));
                if (row.height() > left && table.size() > 1) {
                    pieces.add(Box.stack(Box.stack(table).as(Role.TABLE), below));
                    table = new ArrayList<>(List.of(head));
                    left = room - below.height() - head.height();
                }
                table.add(row);
                left -= row.height();
            }
            pieces.add(Box.stack(Box.stack(table).as(Role.TABLE), below));
        }
        pieces.add(press.list(never(), press.grid().left()));
        return pieces;
    }

    private List<Double> lefts() {
        Grid grid = press.grid();
        double size = press.small().size();
        List<String> names = new ArrayList<>(sets.keySet());
        List<Double> widths =
                names.stream().map(name -> size * (1 + width(name))).toList();
        double all = widths.stream().mapToDouble(Double::doubleValue).sum();
        double narrower = Math.min(1, (1 - NAMES) * grid.inner() / all);
        List<Double> lefts = new ArrayList<>();
        double left = grid.right();
        for (int at = names.size() - 1; at >= 0; at--) {
            left -= narrower * widths.get(at);
            lefts.add(0, left);
        }
        lefts.add(0, grid.left());
        return lefts;
    }

    /** Of a set's name or its counts, as a share of the type size. */
    private double width(String set) {
        return Math.max(
                press.words(Face.BOLD, set).onOneLine(),
                press.words(Face.REGULAR, count(set, sizes.getOrDefault(set, 0)))
                        .onOneLine());
    }

    private String count(String set, int drills) {
        return labels.text(Label.ONE_OF, drills, sizes.getOrDefault(set, 0));
    }

    private SetWork last() {
        return sets.values().stream().reduce((one, other) -> other).orElseThrow();
    }

    private List<Styled> heads(Theme theme) {
        return Stream.concat(Stream.of(labels.text(label(theme))), sets.keySet().stream())
                .map(words -> new Styled(words, Face.BOLD))
                .toList();
    }

    private List<Styled> row(Theme theme, Item item) {
        List<Styled> cells = new ArrayList<>(List.of(new Styled(said(item), Face.REGULAR)));
        sets.forEach((name, work) -> {
            int drills = of(work, theme, item.key());
            cells.add(new Styled(drills == 0 ? "–" : count(name, drills), Face.REGULAR));
        });
        return cells;
    }

    /** What no drill of the school works, by name. */
    private List<Paragraph> never() {
        List<Paragraph> never = new ArrayList<>();
        for (Theme theme : Theme.values()) {
            List<Item> items = last().never(theme);
            if (!items.isEmpty()) {
                String named = items.stream().map(item -> said(item)).collect(Collectors.joining(", "));
                never.add(press.labelled(labels.text(Label.NEVER) + "\u00A0· " + labels.text(label(theme)), named));
            }
        }
        return never;
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

    private String said(Item item) {
        return item.words().in(labels.language().locale());
    }
}
