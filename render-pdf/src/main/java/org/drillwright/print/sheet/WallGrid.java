package org.drillwright.print.sheet;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Legibility;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.page.Type;
import org.drillwright.print.sheet.wall.WallText;
import org.drillwright.print.text.Typefaces;

/**
 * One way to lay rounds on pages.
 *
 * @param columns of names side by side
 * @param scale of the type, 1 for the least that may be read
 */
record WallGrid(Sheet sheet, int columns, double scale, Typefaces faces) {

    private static final double FOOT = 9;
    private static final double INDENT = 0.5;
    private static final String BETWEEN = " \u00B7 ";

    WallGrid at(double other) {
        return new WallGrid(sheet, columns, other, faces);
    }

    /** The pages; nothing if a word is wider than its column, unless it may be broken. */
    Optional<List<Frame>> lay(WallWords words, boolean broken) {
        Flow flow = new Flow(sheet, 1, page -> foot(words, page));
        boolean whole = true;
        for (WallWords.Block block : words.blocks()) {
            List<Box> rows = rows(block);
            whole &= rows.stream().allMatch(Box::isWhole) && names().width(Face.BOLD, block.head()) <= sheet.inner();
            lay(block, rows, flow, words);
        }
        return whole || broken ? Optional.of(flow.pages()) : Optional.empty();
    }

    private Type names() {
        return Type.ofCapitals(faces, scale * Legibility.acrossTheHall());
    }

    private double gap() {
        return 0.5 * names().size();
    }

    private double column() {
        return (sheet.inner() - (columns - 1) * gap()) / columns;
    }

    private List<Box> rows(WallWords.Block block) {
        double place = block.rows().stream()
                        .mapToDouble(row -> names().width(Face.BOLD, row.place()))
                        .max()
                        .orElse(0)
                + 0.5 * names().size();
        List<Box> rows = new ArrayList<>();
        for (WallWords.Row row : block.rows()) {
            rows.add(row(row, place));
        }
        return rows;
    }

    /** All on one line if they fit there, else each on a line. */
    private Box row(WallWords.Row row, double place) {
        Type names = names();
        double pad = 0.1 * names.size();
        double width = column() - place - pad;
        String together = String.join(BETWEEN, row.people());
        boolean fits = names.width(Face.REGULAR, together) <= width;
        List<Mark.Text> lines = new ArrayList<>();
        List<SetText> sets = new ArrayList<>();
        double y = pad;
        for (String words : fits ? List.of(together) : row.people()) {
            SetText set = names.set(Face.REGULAR, words, place, y, fits ? width : width - names.size() * INDENT);
            set.lines().forEach(line -> lines.add(line.moved(isFirst(line, set) ? 0 : names.size() * INDENT, 0)));
            sets.add(set);
            y += set.height();
        }
        SetText number = names.set(Face.BOLD, row.place(), pad, pad, place);
        Node.Group cells =
                new Node.Group(Role.ROW, List.of(number.as(Role.ROW_HEAD), new Node.Words(Role.CELL, lines)));
        return Box.of(y + pad, cells)
                .on(LineWeight.THIN.across(0, column(), y + pad))
                .breaking(sets.toArray(SetText[]::new));
    }

    /** A name that goes on in a second line isn't taken for two. */
    private static boolean isFirst(Mark.Text line, SetText set) {
        return line.baseline() == set.lines().get(0).baseline();
    }

    private void lay(WallWords.Block block, List<Box> rows, Flow flow, WallWords words) {
        Box head = head(block, block.drill(), block.moving());
        flow.makeRoom(head.height() + even(rows));
        Deque<Box> left = new ArrayDeque<>(rows);
        flow.add(head);
        flow.put(filled(left, flow.room()));
        Box further = head(block, words.words().text(WallText.CONTINUED, block.drill()), "");
        while (!left.isEmpty()) {
            flow.turn();
            flow.add(further);
            flow.put(filled(left, flow.room()));
        }
        flow.put(Box.space(gap()));
    }

    /** How high rows are in columns of about one length. */
    private double even(Collection<Box> rows) {
        double highest = rows.stream().mapToDouble(Box::height).max().orElse(0);
        return Box.height(rows) / columns + (columns > 1 ? highest : 0);
    }

    /** Columns of the first of the rows that are left, as many as so much of a page holds. */
    private Box filled(Deque<Box> left, double room) {
        double deep = columns > 1 ? Math.min(room, even(left)) : room;
        List<Box> filled = new ArrayList<>();
        while (filled.size() < columns && !left.isEmpty()) {
            List<Box> column = new ArrayList<>(List.of(left.remove()));
            while (!left.isEmpty() && Box.height(column) + left.element().height() <= deep + 0.01) {
                column.add(left.remove());
            }
            filled.add(Box.stack(column).as(Role.TABLE).moved(filled.size() * (column() + gap()), 0));
        }
        return Box.abreast(filled);
    }

    /** The round in type that is read from 3 m, the drill from half of that, the change from before the sheet. */
    private Box head(WallWords.Block block, String title, String moving) {
        Type drill = Type.ofCapitals(faces, scale * Legibility.beforeTheWall());
        Type change = Type.ofCapitals(faces, scale * Legibility.steppedUpTo());
        return Box.stack(
                        Box.of(Role.TITLE, names().set(Face.BOLD, block.head(), 0, 0, sheet.inner())),
                        Box.of(Role.PARAGRAPH, drill.set(Face.REGULAR, title, 0, 0, sheet.inner())),
                        Box.of(Role.PARAGRAPH, change.set(Face.REGULAR, moving, 0, 0, sheet.inner())))
                .padded(0.4 * change.size());
    }

    private Box foot(WallWords words, int page) {
        String said = Foot.line(words.foot(), words.words().text(WallText.PAGE, page));
        SetText set = new Type(faces, FOOT).set(Face.REGULAR, said, 0, 0.8 * FOOT, sheet.inner());
        return Box.of(2 * FOOT, set.as(Role.PARAGRAPH));
    }
}
