package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Press;
import org.drillwright.print.layout.block.SetText;
import org.drillwright.print.layout.fit.Legibility;
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
record WallGrid(Sheet paper, int columns, double scale, Typefaces faces) {

    private static final double FOOT = 9;
    private static final double INDENT = 0.5;
    private static final String BETWEEN = " \u00B7 ";

    WallGrid at(double other) {
        return new WallGrid(paper, columns, other, faces);
    }

    /** Pages as they are filled. */
    private static final class Pages {
        private final List<Frame> done = new ArrayList<>();
        private List<Mark> marks = new ArrayList<>();
        private List<Node> nodes = new ArrayList<>();
        private double y;
    }

    /** The pages; nothing if a word is wider than its column, unless it may be broken. */
    Optional<List<Frame>> lay(WallWords words, boolean broken) {
        Pages pages = new Pages();
        pages.y = paper.margin();
        boolean whole = true;
        for (WallWords.Block block : words.blocks()) {
            List<Piece> rows = rows(block);
            whole &= rows.stream().allMatch(Piece::whole) && names().width(Face.BOLD, block.head()) <= paper.inner();
            lay(block, rows, pages, words);
        }
        if (!pages.nodes.isEmpty() || pages.done.isEmpty()) {
            turn(pages, words);
        }
        return whole || broken ? Optional.of(pages.done) : Optional.empty();
    }

    private Type names() {
        return Type.ofCapitals(faces, scale * Legibility.acrossTheHall());
    }

    private double gap() {
        return 0.5 * names().size();
    }

    private double column() {
        return (paper.inner() - (columns - 1) * gap()) / columns;
    }

    private double bottom() {
        return paper.bottom() - 2 * FOOT;
    }

    private List<Piece> rows(WallWords.Block block) {
        double place = block.rows().stream()
                        .mapToDouble(row -> names().width(Face.BOLD, row.place()))
                        .max()
                        .orElse(0)
                + 0.5 * names().size();
        List<Piece> rows = new ArrayList<>();
        for (WallWords.Row row : block.rows()) {
            rows.add(row(row, place));
        }
        return rows;
    }

    /** All on one line if they fit there, else each on a line. */
    private Piece row(WallWords.Row row, double place) {
        Type names = names();
        double pad = 0.1 * names.size();
        double width = column() - place - pad;
        String together = String.join(BETWEEN, row.people());
        boolean fits = names.width(Face.REGULAR, together) <= width;
        List<Mark.Text> lines = new ArrayList<>();
        boolean whole = true;
        double y = pad;
        for (String words : fits ? List.of(together) : row.people()) {
            SetText set = names.set(Face.REGULAR, words, place, y, fits ? width : width - names.size() * INDENT);
            set.lines().forEach(line -> lines.add(line.moved(isFirst(line, set) ? 0 : names.size() * INDENT, 0)));
            whole &= set.broken().isEmpty();
            y += set.height();
        }
        SetText number = names.set(Face.BOLD, row.place(), pad, pad, place);
        Node.Group cells = new Node.Group(
                Role.ROW, List.of(new Node.Words(Role.ROW_HEAD, number.lines()), new Node.Words(Role.CELL, lines)));
        Mark rule = new Mark.Line(0, y + pad, column(), y + pad, Press.THIN, Ink.BLACK);
        return new Piece(y + pad, List.of(rule), List.of(cells), whole);
    }

    /** A name that goes on in a second line isn't taken for two. */
    private static boolean isFirst(Mark.Text line, SetText set) {
        return line.baseline() == set.lines().get(0).baseline();
    }

    private void lay(WallWords.Block block, List<Piece> rows, Pages pages, WallWords words) {
        List<Piece> left = rows;
        Piece head = head(block, block.drill(), false);
        double wanted = head.height() + height(rows) / columns + (columns > 1 ? highest(rows) : 0);
        if (!pages.nodes.isEmpty() && pages.y + wanted > bottom()) {
            turn(pages, words);
        }
        do {
            put(head, paper.margin(), pages);
            left = fill(left, pages);
            head = head(block, words.words().text(WallText.CONTINUED, block.drill()), true);
            if (!left.isEmpty()) {
                turn(pages, words);
            }
        } while (!left.isEmpty());
        pages.y += gap();
    }

    private static double height(List<Piece> rows) {
        return rows.stream().mapToDouble(Piece::height).sum();
    }

    private static double highest(List<Piece> rows) {
        return rows.stream().mapToDouble(Piece::height).max().orElse(0);
    }

    /** Fills the columns of what is left of a page; the rows that found no room. */
    private List<Piece> fill(List<Piece> rows, Pages pages) {
        double top = pages.y;
        double even = height(rows) / columns + (columns > 1 ? highest(rows) : 0);
        double deep = Math.min(bottom() - top, columns > 1 ? even : Double.MAX_VALUE);
        double end = top;
        int at = 0;
        for (int column = 0; column < columns && at < rows.size(); column++) {
            double y = top;
            List<Node> table = new ArrayList<>();
            double x = paper.margin() + column * (column() + gap());
            while (at < rows.size() && (table.isEmpty() || y + rows.get(at).height() <= top + deep + 0.01)) {
                pages.marks.addAll(rows.get(at).marksAt(x, y));
                table.addAll(rows.get(at).nodesAt(x, y));
                y += rows.get(at).height();
                at++;
            }
            pages.nodes.add(new Node.Group(Role.TABLE, table));
            end = Math.max(end, y);
        }
        pages.y = end;
        return rows.subList(at, rows.size());
    }

    /** The round in type that is read from 3 m, the drill from half of that, the change from before the sheet. */
    private Piece head(WallWords.Block block, String title, boolean continued) {
        Type drill = Type.ofCapitals(faces, scale * Legibility.beforeTheWall());
        Type change = Type.ofCapitals(faces, scale * Legibility.steppedUpTo());
        List<Mark> marks = new ArrayList<>();
        List<Node> nodes = new ArrayList<>();
        double y = 0;
        SetText round = names().set(Face.BOLD, block.head(), 0, y, paper.inner());
        nodes.add(new Node.Words(Role.TITLE, round.lines()));
        y += round.height();
        SetText named = drill.set(Face.REGULAR, title, 0, y, paper.inner());
        nodes.add(new Node.Words(Role.PARAGRAPH, named.lines()));
        y += named.height();
        if (!block.moving().isEmpty() && !continued) {
            SetText moving = change.set(Face.REGULAR, block.moving(), 0, y, paper.inner());
            nodes.add(new Node.Words(Role.PARAGRAPH, moving.lines()));
            y += moving.height();
        }
        return new Piece(y + 0.4 * change.size(), marks, nodes, true);
    }

    private static void put(Piece piece, double x, Pages pages) {
        pages.marks.addAll(piece.marksAt(x, pages.y));
        pages.nodes.addAll(piece.nodesAt(x, pages.y));
        pages.y += piece.height();
    }

    private void turn(Pages pages, WallWords words) {
        Type small = new Type(faces, FOOT);
        SetText set = small.set(
                Face.REGULAR,
                words.foot() + " · " + words.words().text(WallText.PAGE, pages.done.size() + 1),
                paper.margin(),
                paper.bottom() - 1.2 * FOOT,
                paper.inner());
        pages.nodes.add(new Node.Words(Role.PARAGRAPH, set.lines()));
        pages.done.add(new Frame(
                paper.width(),
                paper.height(),
                paper.margin(),
                pages.marks,
                List.of(new Node.Group(Role.CARD, pages.nodes))));
        pages.marks = new ArrayList<>();
        pages.nodes = new ArrayList<>();
        pages.y = paper.margin();
    }
}
