package org.drillwright.print.sheet.wall;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;

/**
 * One page of names by rounds.
 *
 * @param size of names and of places that one walks to, in points; all other lengths of the grid are shares of it
 * @param name the width of the column of names
 * @param column the width of a round, in points
 */
record GridPage(
        Notice notice, List<Evening.Column> rounds, List<Evening.Row> rows, double size, double name, double column) {

    /** Behind the names. */
    static final double PAD = 0.3;

    /** The type of a sign beside a place, as a share of the place's. */
    static final double SIGN = 0.6;

    /** How far below the baseline a place is underlined. */
    private static final double UNDER = 0.12;

    /** The type of places where one stays. */
    private static final double STAYING = 14.0 / 19;

    private static final double RAISED = 0.4;
    private static final double LEADING = 24.6 / 19;
    private static final double LOOSEST = 1.3;
    private static final double TIGHT = 0.45;
    private static final double LETTER = 14;
    private static final double ROUND = 11;
    private static final int TOGETHER = 4;

    static Face face(Evening.Cell cell) {
        return cell.walks() ? Face.BOLD : Face.REGULAR;
    }

    static double size(Evening.Cell cell, double size) {
        return cell.walks() ? size : STAYING * size;
    }

    private static double heads(Notice notice) {
        return Type.LEADING * (LETTER + ROUND) * notice.scale() + 4;
    }

    /** What is left for rows, in points. */
    static double room(Notice notice, Box head) {
        return notice.room() - head.height() - heads(notice);
    }

    /** Of all rows, as a share of the type. */
    static double height(Notice notice, List<String> names, double name) {
        return names.stream().mapToDouble(one -> height(notice, one, name)).sum();
    }

    private static double height(Notice notice, String name, double width) {
        return LEADING
                + notice.type(1).set(Face.REGULAR, name, 0, 0, width + SLACK).height()
                - Type.LEADING;
    }

    /** What rounding may take away from a column that is as wide as its widest name. */
    private static final double SLACK = 1e-6;

    private double x(int round) {
        return size * (name + PAD) + round * column;
    }

    Frame frame(Box head, int number) {
        List<Mark> marks = new ArrayList<>();
        List<Node> table = new ArrayList<>();
        double y = heads(notice);
        table.add(heads(y));
        marks.add(rule(y, LineWeight.HEAVY));
        double shares = height(notice, rows.stream().map(Evening.Row::name).toList(), name);
        double loose = Math.min(LOOSEST, Math.max(1, room(notice, head) / (size * shares)));
        for (int at = 0; at < rows.size(); at++) {
            double height = loose * size * height(notice, rows.get(at).name(), name);
            table.add(row(rows.get(at), y, height));
            lines(rows.get(at), y + (height + notice.type(size).capHeight()) / 2, marks);
            y += height;
            boolean heavy = at % TOGETHER == TOGETHER - 1 || at == rows.size() - 1;
            marks.add(rule(y, heavy ? LineWeight.HEAVY : LineWeight.THIN));
        }
        uprights(y, marks);
        Box grid = Box.of(y, marks, List.of(new Node.Group(Role.TABLE, table)));
        return notice.page(Box.stack(head, grid), notice.end(notice.type(size), number));
    }

    /** Under the places where one leads first. */
    private void lines(Evening.Row row, double baseline, List<Mark> marks) {
        for (int at = 0; at < row.cells().size(); at++) {
            Evening.Cell cell = row.cells().get(at);
            if (cell.leads()) {
                double y = baseline + UNDER * size;
                double left = left(cell, at);
                double wide = notice.type(size(cell, size)).width(face(cell), cell.place());
                marks.add(LineWeight.HEAVY.across(left, left + wide, y));
            }
        }
    }

    /** Where a place begins, which stands with its sign in the middle of its column. */
    private double left(Evening.Cell cell, int round) {
        Type place = notice.type(size(cell, size));
        double wide = place.width(face(cell), cell.place()) + place.times(SIGN).width(Face.REGULAR, cell.sign());
        return x(round) + (column - wide) / 2;
    }

    private Mark rule(double y, LineWeight rule) {
        return rule.across(0, x(rounds.size()), y);
    }

    /** A heavy one before each drill; thin ones where numbers come near each other. */
    private void uprights(double end, List<Mark> marks) {
        double widest = rows.stream()
                .flatMap(row -> row.cells().stream())
                .mapToDouble(cell -> notice.type(size(cell, size)).width(face(cell), cell.place()))
                .max()
                .orElse(0);
        for (int at = 0; at < rounds.size(); at++) {
            if (begins(at)) {
                marks.add(LineWeight.HEAVY.down(x(at), 0, end));
            } else if (column - widest < TIGHT * size) {
                marks.add(LineWeight.THIN.down(x(at), end, heads(notice)));
            }
        }
    }

    private boolean begins(int round) {
        return round == 0
                || !rounds.get(round).letter().equals(rounds.get(round - 1).letter());
    }

    /** Over each round its number, over the first one of a drill the drill's letter. */
    private Node heads(double end) {
        Type letter = notice.type(LETTER * notice.scale());
        Type small = notice.type(ROUND * notice.scale());
        double baseline = end - 0.35 * small.size();
        List<Node> cells = new ArrayList<>();
        cells.add(new Node.Words(
                Role.COLUMN_HEAD,
                List.of(small.line(Face.REGULAR, notice.wording().text(WallText.COLUMN_ROUND), 0, baseline))));
        for (int at = 0; at < rounds.size(); at++) {
            List<Mark.Text> lines = new ArrayList<>();
            if (begins(at)) {
                lines.add(centred(letter, Face.BOLD, rounds.get(at).letter(), at, 0.95 * letter.size()));
            }
            lines.add(centred(small, Face.REGULAR, String.valueOf(rounds.get(at).round()), at, baseline));
            cells.add(new Node.Words(Role.COLUMN_HEAD, lines));
        }
        return new Node.Group(Role.ROW, cells);
    }

    private Node row(Evening.Row row, double y, double height) {
        Type names = notice.type(size);
        double baseline = y + (height + names.capHeight()) / 2;
        List<Node> cells = new ArrayList<>();
        SetText set = names.set(Face.REGULAR, row.name(), 0, 0, size * (name + SLACK));
        cells.add(set.about(baseline).as(Role.ROW_HEAD));
        for (int at = 0; at < row.cells().size(); at++) {
            cells.add(cell(row.cells().get(at), at, baseline));
        }
        return new Node.Group(Role.ROW, cells);
    }

    private Node cell(Evening.Cell cell, int round, double baseline) {
        List<Mark.Text> words = new ArrayList<>();
        if (!cell.place().isEmpty()) {
            Type place = notice.type(size(cell, size));
            Type sign = place.times(SIGN);
            double wide = place.width(face(cell), cell.place());
            double x = left(cell, round);
            words.add(place.line(face(cell), cell.place(), x, baseline));
            if (!cell.sign().isEmpty()) {
                words.add(sign.line(Face.REGULAR, cell.sign(), x + wide, baseline - RAISED * place.size()));
            }
        }
        return new Node.Words(Role.CELL, words);
    }

    private Mark.Text centred(Type type, Face face, String words, int round, double baseline) {
        return type.line(face, words, x(round) + (column - type.width(face, words)) / 2, baseline);
    }
}
