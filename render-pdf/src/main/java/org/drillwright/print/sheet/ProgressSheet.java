package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.model.Drill;
import org.drillwright.model.School;
import org.drillwright.model.SheetSize;
import org.drillwright.plan.progress.Progress;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.roster.Person;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.Flow;
import org.drillwright.print.page.Foot;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Sheet;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Typefaces;

/**
 * Who knows what, for the hand: a row for each person, a column for each drill by its number in teaching order, the titles
 * by number below. Drills that find no room side by side follow in a further table, people on further pages.
 */
public final class ProgressSheet {

    private static final String KNOWN = "\u25A0";
    private static final String NEXT = "\u25A1";

    /** The least width of a column: two figures and the sign with white on both sides. */
    private static final double LEAST = Millimetres.toPoints(4.6);

    private static final double MOST = Millimetres.toPoints(11.6);
    private static final double LONGEST_NAME = Millimetres.toPoints(45);
    private static final double ROW = 18;
    private static final double HEADS = 16;
    private static final double GAP = 4;
    private static final int TOGETHER = 4;

    private final Progress progress;
    private final List<String> names;
    private final HandWords words;
    private final HandType type;
    private final double width;
    private final double name;

    private ProgressSheet(Progress progress, Naming naming, HandWords words, HandType type, double width) {
        this.progress = progress;
        this.names =
                progress.people().stream().map(Person::name).map(naming::of).toList();
        this.words = words;
        this.type = type;
        this.width = width;
        double widest = names.stream()
                .mapToDouble(one -> type.words().width(Face.BOLD, one))
                .max()
                .orElse(0);
        this.name = Math.min(LONGEST_NAME, widest) + 2 * GAP;
    }

    public static List<Frame> pages(Progress progress, Naming names, SheetSize size, School school, Typefaces faces) {
        HandWords words = HandWords.in(school.language());
        HandType type = new HandType(faces);
        Sheet sheet = Sheet.upright(size, Sheet.HELD);
        ProgressSheet known = new ProgressSheet(progress, names, words, type, sheet.inner());
        Flow flow = new Flow(sheet, 1, Foot.of(type.foot(), sheet, "", school.name()));
        flow.add(type.heading().title(words.text(HandWord.WHO_KNOWS), sheet.inner()));
        flow.add(type.notes().paragraph(Face.REGULAR, words.text(HandWord.WHO_KNOWS_HOW, KNOWN, NEXT), sheet.inner()));
        known.tables(flow);
        return Mirrored.pages(flow.pages(), school.language().locale(), faces);
    }

    private void tables(Flow flow) {
        int drills = progress.drills().size();
        int abreast = Math.max(1, (int) ((width - name) / LEAST));
        int tables = Math.max(1, (drills + abreast - 1) / abreast);
        int each = (drills + tables - 1) / tables;
        for (int from = 0; from < drills; from += each) {
            table(flow, from, Math.min(drills, from + each));
        }
    }

    private void table(Flow flow, int from, int to) {
        double column = Math.min(MOST, (width - name) / (to - from));
        List<Box> rows = IntStream.range(0, names.size())
                .mapToObj(at -> row(at, from, to, column))
                .toList();
        flow.table(head(from, to, column), rows);
        flow.add(titles(from, to));
    }

    private double x(int at, double column) {
        return name + at * column;
    }

    /** The numbers of the drills. */
    private Box head(int from, int to, double column) {
        Type small = type.foot();
        List<Node> cells = new ArrayList<>();
        cells.add(words(Role.COLUMN_HEAD, small, Face.REGULAR, words.labels().text(Label.DRILL), 0, HEADS - GAP));
        for (int at = from; at < to; at++) {
            cells.add(centred(Role.COLUMN_HEAD, small, String.valueOf(at + 1), at - from, column, HEADS - GAP));
        }
        return Box.of(HEADS, new Node.Group(Role.ROW, cells))
                .on(LineWeight.HEAVY.across(0, x(to - from, column), HEADS));
    }

    private Box row(int person, int from, int to, double column) {
        String who = progress.people().get(person).name();
        SetText set = type.words().set(Face.BOLD, names.get(person), 0, GAP / 2, name - GAP);
        double height = Math.max(ROW, set.height() + GAP);
        double baseline = (height + type.words().capHeight()) / 2;
        List<Node> cells = new ArrayList<>();
        List<Mark> marks = new ArrayList<>();
        cells.add(set.about(baseline).as(Role.ROW_HEAD));
        for (int at = from; at < to; at++) {
            Drill drill = progress.drills().get(at);
            String sign = switch (progress.standing(who, drill)) {
                case KNOWN -> KNOWN;
                case NEXT -> NEXT;
                case LATER -> "";
            };
            cells.add(centred(Role.CELL, type.notes(), sign, at - from, column, baseline));
            double x = x(at - from, column);
            boolean level = at == from || !progress.drills().get(at - 1).level().equals(drill.level());
            marks.add((level ? LineWeight.HEAVY : LineWeight.THIN).down(x, 0, height));
        }
        boolean heavy = person % TOGETHER == TOGETHER - 1 || person == names.size() - 1;
        marks.add((heavy ? LineWeight.HEAVY : LineWeight.THIN).across(0, x(to - from, column), height));
        return Box.of(height, marks, List.of(new Node.Group(Role.ROW, cells)));
    }

    /** What the numbers mean, in two columns. */
    private Box titles(int from, int to) {
        int half = (to - from + 1) / 2;
        Box left = list(from, from + half);
        Box right = list(from + half, to).moved(width / 2 + GAP, 0);
        return Box.abreast(List.of(left, right)).moved(0, 2 * GAP).padded(4 * GAP);
    }

    private Box list(int from, int to) {
        Type small = type.notes();
        double number = small.width(Face.BOLD, String.valueOf(progress.drills().size())) + GAP;
        List<Box> lines = new ArrayList<>();
        for (int at = from; at < to; at++) {
            SetText title =
                    small.set(Face.REGULAR, progress.drills().get(at).title(), number, 0, width / 2 - number - GAP);
            SetText of = small.set(Face.BOLD, String.valueOf(at + 1), 0, 0, number);
            List<Mark.Text> both = new ArrayList<>(of.lines());
            both.addAll(title.lines());
            lines.add(Box.of(title.height(), new Node.Words(Role.PARAGRAPH, both)));
        }
        return Box.stack(lines);
    }

    private Node centred(Role role, Type set, String words, int at, double column, double baseline) {
        double off = (column - set.width(Face.REGULAR, words)) / 2;
        return words(role, set, Face.REGULAR, words, x(at, column) + off, baseline);
    }

    private static Node words(Role role, Type set, Face face, String words, double x, double baseline) {
        List<Mark.Text> lines = words.isEmpty() ? List.of() : List.of(set.line(face, words, x, baseline));
        return new Node.Words(role, lines);
    }
}
