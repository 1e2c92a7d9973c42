package org.drillwright.print.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Setting;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Block;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Typefaces;

/** A table to sign: a row for each name, blank, and a column for each drill, its title upright over it. */
public final class SignOff {

    private static final double NAME = Millimetres.toPoints(46);

    /** Room for initials. */
    private static final double BOX = Millimetres.toPoints(7.5);

    private static final double ROW = Millimetres.toPoints(8.5);

    /** A title takes two lines of so much at most. */
    private static final double HEAD = Millimetres.toPoints(52);

    private final Sheet sheet;
    private final Labels labels;
    private final Type type;

    public SignOff(Sheet sheet, Labels labels, Typefaces faces) {
        this.sheet = sheet;
        this.labels = labels;
        this.type = Type.reading(faces);
    }

    /**
     * As many pages as the drills take, each with as many rows as it holds.
     *
     * @param first the number of the first page
     * @param document what it is part of
     */
    public List<Frame> pages(List<String> titles, int first, String document) {
        Flow flow = new Flow(sheet, first, Foot.of(type, sheet, labels, document));
        int most = (int) ((sheet.inner() - NAME) / BOX);
        int tables = Math.max(1, (titles.size() + most - 1) / most);
        for (int table = 0; table < tables; table++) {
            int from = titles.size() * table / tables;
            int to = titles.size() * (table + 1) / tables;
            flow.turn();
            flow.add(type.times(1.6).title(labels.text(Label.SIGN_OFF), sheet.inner()));
            flow.add(type.paragraph(Face.REGULAR, labels.text(Label.SIGN_OFF_HOW), sheet.inner())
                    .padded(type.size()));
            double box = (sheet.inner() - NAME) / Math.max(1, to - from);
            Block head = head(titles.subList(from, to), from, Math.min(box, 2 * BOX));
            int rows = (int) ((flow.room() - head.height()) / ROW);
            flow.table(
                    head,
                    IntStream.range(0, rows)
                            .mapToObj(row -> row(to - from, Math.min(box, 2 * BOX)))
                            .toList());
        }
        return flow.pages();
    }

    private Block head(List<String> titles, int before, double box) {
        List<Node> cells = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        Setting name = type.set(Face.BOLD, labels.text(Label.NAME), 0, HEAD - 1.6 * type.size(), NAME);
        cells.add(new Node.Words(Role.COLUMN_HEAD, name.lines()));
        for (int at = 0; at < titles.size(); at++) {
            double x = NAME + at * box;
            cells.add(upright((before + at + 1) + " " + titles.get(at), x, box));
            marks.add(new Mark.Line(x, 0, x, HEAD, 0.5, Ink.BLACK));
        }
        double right = NAME + titles.size() * box;
        marks.add(new Mark.Line(right, 0, right, HEAD, 0.5, Ink.BLACK));
        marks.add(new Mark.Line(0, HEAD, right, HEAD, 1, Ink.BLACK));
        return new Block(HEAD, marks, List.of(new Node.Group(Role.ROW, cells)));
    }

    /** Words that run upwards, as large as two lines of them go into the box. */
    private Node upright(String words, double x, double box) {
        Type small = type.times(0.85);
        Setting set = small.set(Face.REGULAR, words, 0, 0, HEAD - small.size());
        while (set.lines().size() * Setting.LEADING * small.size() > box && small.size() > 5) {
            small = small.times(0.95);
            set = small.set(Face.REGULAR, words, 0, 0, HEAD - small.size());
        }
        double across = set.lines().size() * Setting.LEADING * small.size();
        List<Mark.Text> lines = new ArrayList<>();
        for (Mark.Text line : set.lines()) {
            double down = HEAD - 0.5 * small.size() - line.x();
            lines.add(new Mark.Text(
                    x + (box - across) / 2 + line.baseline(),
                    down,
                    line.size(),
                    line.face(),
                    line.text(),
                    line.ink(),
                    90));
        }
        return new Node.Words(Role.COLUMN_HEAD, lines);
    }

    private Block row(int boxes, double box) {
        List<Node> cells = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        cells.add(new Node.Words(Role.ROW_HEAD, List.of()));
        for (int at = 0; at <= boxes; at++) {
            double x = NAME + at * box;
            marks.add(new Mark.Line(x, 0, x, ROW, 0.5, Ink.BLACK));
            if (at < boxes) {
                cells.add(new Node.Words(Role.CELL, List.of()));
            }
        }
        marks.add(new Mark.Line(0, ROW, NAME + boxes * box, ROW, 0.5, Ink.BLACK));
        return new Block(ROW, marks, List.of(new Node.Group(Role.ROW, cells)));
    }
}
