package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.Columns;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.text.Typeface;

/** One count: its numeral, the call if it has one, what the two do, the distance, and safety under them. */
public final class CountBlock {

    /** Numbers that read as another number when the card hangs upside down. */
    private static final Pattern TURNS_OVER = Pattern.compile("(?=.*[69])[01689]+");

    private final CardText.Count count;
    private final Press press;
    private final double turn;
    private final double cue;

    public CountBlock(CardText.Count count, Press press) {
        this.count = count;
        this.press = press;
        this.turn = press.scale().turn();
        this.cue = press.scale().cue();
    }

    public Slab set() {
        Columns columns = press.columns();
        double pad = 0.3 * turn;
        Setting call = press.set(count.call(), cue, columns.acrossTurns(), pad);
        double top = pad + call.height();
        Setting leader = press.set(count.leader(), turn, columns.leader(), top);
        Setting follower = press.set(count.follower(), turn, columns.follower(), top);
        double sameBaseline = top + regular().ascent() * (turn - cue);
        Setting distance = press.set(count.distance(), cue, columns.distance(), sameBaseline);
        double turns =
                Stream.of(leader, follower).mapToDouble(Setting::height).max().orElse(0);
        double cueEnd = sameBaseline + distance.height();
        double beside = columns.pictures() ? 0 : cueEnd - top;
        double under = top + Math.max(turns, beside) + 0.12 * turn;
        Sign sign = Sign.before(columns.leader().x(), under, cue, Ink.BLACK, Ink.WHITE);
        Columns.Span across = columns.safety();
        Setting safety =
                press.set(count.safety(), cue, across.x() + sign.width(), under, across.width() - sign.width());
        double bottom = count.safety().isEmpty() ? under - 0.12 * turn : under + safety.height();
        double numeral =
                pad + regular().ascent() * turn + capHeight() * (press.scale().numeral() - turn);
        double pictureTop = count.distance().isEmpty() ? top : cueEnd + 0.1 * turn;
        Optional<Node.Figure> picture = picture(pictureTop);
        double pictureEnd = picture.map(figure -> figure.box().bottom()).orElse(cueEnd);
        return new Slab(
                Math.max(Math.max(bottom, pictureEnd), numeral + 0.2 * turn) + pad,
                backdrop(sign, numeral),
                List.of(row(new Cells(call, leader, follower, distance, picture, safety), numeral)),
                Stream.of(call, leader, follower, distance, safety)
                        .flatMap(set -> set.broken().stream())
                        .toList());
    }

    private record Cells(
            Setting call,
            Setting leader,
            Setting follower,
            Setting distance,
            Optional<Node.Figure> picture,
            Setting safety) {}

    /** Under the distance, to the edge. */
    private Optional<Node.Figure> picture(double top) {
        double width = Columns.pictureWidth(press.scale());
        return count.picture()
                .map(picture -> picture.draw(press.columns().distance().right() - width, top, width));
    }

    private List<Mark> backdrop(Sign sign, double baseline) {
        List<Mark> marks = new ArrayList<>(count.safety().isEmpty() ? List.of() : sign.marks());
        if (TURNS_OVER.matcher(count.numeral()).matches()) {
            double x = press.columns().count().x();
            double width = numeralWidth();
            double y = baseline + 0.16 * turn;
            marks.add(new Mark.Line(x, y, x + width, y, 0.12 * turn, Ink.BLACK));
        }
        return marks;
    }

    private Node row(Cells of, double baseline) {
        List<Mark.Text> head = new ArrayList<>();
        head.add(new Mark.Text(
                press.columns().count().x(), baseline, press.scale().numeral(), Face.BOLD, count.numeral(), Ink.BLACK));
        head.addAll(of.call().lines());
        return new Node.Group(
                Role.ROW,
                List.of(
                        new Node.Words(Role.ROW_HEAD, head),
                        cell(of.leader()),
                        cell(of.follower()),
                        distance(of),
                        cell(of.safety())));
    }

    private static Node distance(Cells of) {
        if (of.picture().isEmpty()) {
            return cell(of.distance());
        }
        List<Node> parts = new ArrayList<>();
        if (!of.distance().lines().isEmpty()) {
            parts.add(new Node.Words(Role.PARAGRAPH, of.distance().lines()));
        }
        parts.add(of.picture().get());
        return new Node.Group(Role.CELL, parts);
    }

    private static Node cell(Setting words) {
        return new Node.Words(Role.CELL, words.lines());
    }

    private double numeralWidth() {
        return press.faces().of(Face.BOLD).width(count.numeral())
                * press.scale().numeral();
    }

    private double capHeight() {
        return regular().capHeight();
    }

    private Typeface regular() {
        return press.faces().of(Face.REGULAR);
    }
}
