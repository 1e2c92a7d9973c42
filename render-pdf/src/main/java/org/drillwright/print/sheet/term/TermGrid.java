package org.drillwright.print.sheet.term;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.drillwright.plan.schedule.ClassRow;
import org.drillwright.plan.schedule.GroupPlan;
import org.drillwright.plan.schedule.Taught;
import org.drillwright.plan.term.Exam;
import org.drillwright.plan.term.Term;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.Role;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.Type;
import org.drillwright.wording.Message;

/**
 * Drills down, classes across: a disc where a drill is new, a ring where it comes again, grey where the class is over; under
 * them the minutes of drills as bars, and how many are expected.
 *
 * @param language of its words
 * @param type of drills and days
 * @param first how wide the drills' names are, in points
 */
record TermGrid(
        Term term,
        GroupPlan group,
        UnaryOperator<String> title,
        Locale language,
        Type type,
        double width,
        double first) {

    private static final String NEW = "\u25CF";
    private static final String AGAIN = "\u25CB";
    private static final Ink OVER = new Ink(0.5);
    private static final Ink BAND = new Ink(0.93);
    private static final Ink FINE = new Ink(0.75);
    private static final Ink BAR = new Ink(0.6);

    /** A row's height in sizes of its type, at the least and at the most. */
    private static final double ROW = 1.3;

    /** The smallest type, in points: read from 280 mm as capitals of 16 minutes of arc (ISO 9241-303). */
    private static final double SMALLEST = 5.2;

    /** Bars, in sizes of type. */
    private static final double BARS = 3;

    /** What words may take of a column. */
    private static final double WIDEST = 0.85;

    private static final double STEP = 0.96;

    static TermGrid of(
            Term term, GroupPlan group, UnaryOperator<String> title, Locale language, Type type, double width) {
        double widest = group.group().drills().stream()
                .mapToDouble(drill -> type.width(Face.REGULAR, title.apply(drill)))
                .max()
                .orElse(0);
        return new TermGrid(term, group, title, language, type, width, Math.min(widest + type.size(), 0.4 * width));
    }

    private TermGrid times(double factor) {
        return of(term, group, title, language, type.times(factor), width);
    }

    /** The same in type as large as a height takes; nothing if the smallest is too large. */
    Optional<TermGrid> fitted(double height) {
        if (height() <= height && !isTight()) {
            return Optional.of(this);
        }
        return type.size() * STEP < SMALLEST ? Optional.empty() : times(STEP).fitted(height);
    }

    TermGrid smallest() {
        return times(SMALLEST / type.size());
    }

    /** What the signs mean. */
    static Message legend(Term term, GroupPlan group) {
        Message bars = Message.of(TermGrid.class, "legend", NEW, AGAIN);
        return term.exam()
                .filter(exam -> exam.drills().stream().anyMatch(group.group().drills()::contains))
                .map(exam -> Message.of(TermGrid.class, "legend.exam", bars, Message.day(exam.date())))
                .orElse(bars);
    }

    private String said(String key) {
        return Message.of(TermGrid.class, key).in(language);
    }

    private double column() {
        return (width - first) / Math.max(1, group.classes().size());
    }

    private double row() {
        return ROW * type.size();
    }

    private boolean isTight() {
        return column() < row();
    }

    private double height() {
        return head().height() + Box.height(rows());
    }

    private double x(int at) {
        return first + at * column();
    }

    /** The days stand upright, reading from below. */
    Box head() {
        double height = type.width(Face.REGULAR, "2026-12-09") + 0.8 * type.size();
        List<Node> cells = new ArrayList<>();
        cells.add(new Node.Words(
                Role.COLUMN_HEAD,
                type.set(Face.BOLD, said("drill"), 0, height - 1.5 * type.size(), first)
                        .lines()));
        for (int at = 0; at < group.classes().size(); at++) {
            ClassRow row = group.classes().get(at);
            double x = x(at) + column() / 2 + 0.36 * type.size();
            cells.add(new Node.Words(
                    Role.COLUMN_HEAD,
                    List.of(new Mark.Text(
                            x,
                            height - 0.4 * type.size(),
                            type.size(),
                            Face.REGULAR,
                            row.day().date().toString(),
                            ink(row),
                            90))));
        }
        return Box.of(height, uprights(height), List.of(new Node.Group(Role.ROW, cells)));
    }

    private static Ink ink(ClassRow row) {
        return row.over() ? OVER : Ink.BLACK;
    }

    /** Fine lines between the classes, and a heavy one before those behind the exam. */
    private List<Mark> uprights(double height) {
        List<Mark> marks = new ArrayList<>();
        for (int at = 0; at <= group.classes().size(); at++) {
            boolean exam = isExam(at);
            double rule = exam ? 2 * LineWeight.HEAVY.width() : LineWeight.THIN.width();
            marks.add(new Mark.Line(x(at), 0, x(at), height, rule, exam ? Ink.BLACK : FINE));
        }
        return marks;
    }

    /** Whether the exam is before a class and behind the one before it. */
    private boolean isExam(int at) {
        Optional<Exam> exam = term.exam()
                .filter(one -> one.drills().stream().anyMatch(group.group().drills()::contains));
        if (exam.isEmpty()) {
            return false;
        }
        boolean before = at == group.classes().size()
                || !group.classes().get(at).day().date().isBefore(exam.get().date());
        boolean behind = at == 0
                || group.classes().get(at - 1).day().date().isBefore(exam.get().date());
        return before && behind;
    }

    List<Box> rows() {
        List<Box> rows = new ArrayList<>();
        for (String drill : group.group().drills()) {
            rows.add(drill(drill, rows.size() % 2 == 0));
        }
        rows.add(bars());
        rows.add(expected());
        return rows;
    }

    private Box drill(String drill, boolean band) {
        List<Node> cells = new ArrayList<>();
        cells.add(heading(title.apply(drill)));
        for (int at = 0; at < group.classes().size(); at++) {
            ClassRow row = group.classes().get(at);
            String sign = has(row.asNew(), drill) ? NEW : has(row.again(), drill) ? AGAIN : "";
            cells.add(cell(sign, at, row, baseline()));
        }
        List<Mark> marks = new ArrayList<>();
        if (band) {
            marks.add(Mark.Shape.filled(Outline.box(new Rectangle(0, 0, width, row())), BAND));
        }
        marks.addAll(uprights(row()));
        return Box.of(row(), marks, List.of(new Node.Group(Role.ROW, cells)));
    }

    private static boolean has(List<Taught> taught, String drill) {
        return taught.stream().anyMatch(one -> one.drill().equals(drill));
    }

    private double baseline() {
        return (row() + type.capHeight()) / 2;
    }

    /** On one line: what is too long is set smaller. */
    private Node heading(String words) {
        double room = first - 0.5 * type.size();
        double wide = type.width(Face.REGULAR, words);
        Type set = wide > room ? type.times(room / wide) : type;
        return new Node.Words(
                Role.ROW_HEAD, List.of(new Mark.Text(0, baseline(), set.size(), Face.REGULAR, words, Ink.BLACK)));
    }

    private Node cell(String words, int at, ClassRow row, double baseline) {
        if (words.isEmpty()) {
            return new Node.Words(Role.CELL, List.of());
        }
        double x = x(at) + (column() - type.width(Face.REGULAR, words)) / 2;
        return new Node.Words(
                Role.CELL, List.of(new Mark.Text(x, baseline, type.size(), Face.REGULAR, words, ink(row))));
    }

    /** To the height of the longest class. */
    private Box bars() {
        double bar = BARS * type.size();
        double gap = 0.4 * type.size();
        double height = gap + bar + row();
        int most = Math.max(
                1, group.classes().stream().mapToInt(ClassRow::minutes).max().orElse(1));
        List<Mark> marks = new ArrayList<>(uprights(height));
        List<Node> cells = new ArrayList<>();
        cells.add(heading(said("minutes")).moved(0, gap + bar));
        for (int at = 0; at < group.classes().size(); at++) {
            ClassRow row = group.classes().get(at);
            double whole = bar * row.minutes() / most;
            double used = bar * Math.min(most, row.used()) / most;
            double left = x(at) + 0.2 * column();
            double wide = 0.6 * column();
            marks.add(Mark.Shape.filled(Outline.box(new Rectangle(left, gap + bar - used, wide, used)), BAR));
            marks.add(Mark.Shape.stroked(
                    Outline.box(new Rectangle(left, gap + bar - whole, wide, whole)),
                    LineWeight.THIN.width(),
                    Ink.BLACK));
            cells.add(cell(minutes(row), at, row, gap + bar + baseline()));
        }
        return Box.of(height, marks, List.of(new Node.Group(Role.ROW, cells)));
    }

    /** Of how many, where there is room to say it; the bar shows it. */
    private String minutes(ClassRow row) {
        String both = row.used() + "/" + row.minutes();
        return type.width(Face.REGULAR, both) > WIDEST * column() ? String.valueOf(row.used()) : both;
    }

    private Box expected() {
        List<Node> cells = new ArrayList<>();
        cells.add(heading(said("expected")));
        for (int at = 0; at < group.classes().size(); at++) {
            ClassRow row = group.classes().get(at);
            cells.add(cell(String.valueOf(Math.round(row.expected())), at, row, baseline()));
        }
        return Box.of(row(), uprights(row()), List.of(new Node.Group(Role.ROW, cells)));
    }
}
