package org.drillwright.print.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Typefaces;

/** A table to sign: a row for each drill, and columns for a few names, blank; behind it how to read the pictures. */
public final class SignOff {

    private static final double TYPE = 11;

    /** High enough for initials and a date by hand. */
    private static final double ROW = Millimetres.toPoints(11.5);

    private static final double NUMBER = Millimetres.toPoints(12);

    private static final double NAME = Millimetres.toPoints(24);

    private static final int NAMES = 4;

    private final Sheet sheet;
    private final Labels labels;
    private final Type type;

    public SignOff(Sheet sheet, Labels labels, Typefaces faces) {
        this.sheet = sheet;
        this.labels = labels;
        this.type = new Type(faces, TYPE);
    }

    /**
     * As many pages as the drills take.
     *
     * @param first the number of the first page
     * @param document what it is part of
     */
    public List<Frame> pages(List<String> titles, int first, String document) {
        Flow flow = new Flow(sheet, first, Foot.of(type.times(0.8), sheet, labels.text(Label.DEFERRAL_PAGE), document));
        flow.add(type.times(1.8).title(labels.text(Label.SIGN_OFF), sheet.inner()));
        flow.add(type.paragraph(Face.REGULAR, labels.text(Label.SIGN_OFF_HOW), sheet.inner())
                .padded(type.size()));
        flow.table(
                head(),
                IntStream.range(0, titles.size())
                        .mapToObj(at -> row(at + 1, titles.get(at)))
                        .toList());
        new CardKey(type, sheet.inner(), labels).addPictures(flow);
        return Mirrored.pages(flow.pages(), labels.language().locale(), type.faces());
    }

    /** The column of card numbers, wide enough for its head. */
    private double number() {
        return Math.max(NUMBER, type.widestWord(Face.BOLD, labels.text(Label.CARD)) + 0.5 * type.size());
    }

    private double names() {
        return sheet.inner() - NAMES * NAME;
    }

    private Box head() {
        List<Node> cells = new ArrayList<>();
        cells.add(cell(Role.COLUMN_HEAD, Face.BOLD, labels.text(Label.CARD), 0, number(), ROW));
        cells.add(cell(Role.COLUMN_HEAD, Face.BOLD, labels.text(Label.DRILL), number(), names() - number(), ROW));
        for (int at = 0; at < NAMES; at++) {
            double x = names() + at * NAME;
            cells.add(cell(Role.COLUMN_HEAD, Face.REGULAR, labels.text(Label.NAME), x + 3, NAME - 3, ROW));
        }
        return ruled(cells, ROW, LineWeight.HEAVY);
    }

    private Box row(int number, String title) {
        double room = names() - number() - type.size();
        double height = Math.max(ROW, type.set(Face.REGULAR, title, 0, 0, room).height() + 0.5 * type.size());
        List<Node> cells = new ArrayList<>();
        cells.add(cell(Role.ROW_HEAD, Face.BOLD, String.valueOf(number), 0, number(), height));
        cells.add(cell(Role.CELL, Face.REGULAR, title, number(), room, height));
        for (int at = 0; at < NAMES; at++) {
            cells.add(new Node.Words(Role.CELL, List.of()));
        }
        return ruled(cells, height, LineWeight.THIN);
    }

    /** In the middle of its row. */
    private Node cell(Role role, Face face, String words, double x, double width, double height) {
        SetText set = type.set(face, words, x, 0, width);
        return set.as(role).moved(0, (height - set.height()) / 2);
    }

    private Box ruled(List<Node> cells, double height, LineWeight rule) {
        List<Mark> marks = new ArrayList<>();
        marks.add(rule.across(0, sheet.inner(), height));
        for (int at = 0; at < NAMES; at++) {
            double x = names() + at * NAME;
            marks.add(LineWeight.THIN.down(x, 0, height));
        }
        return Box.of(height, marks, List.of(new Node.Group(Role.ROW, cells)));
    }
}
