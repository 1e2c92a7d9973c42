package org.drillwright.print.sheet;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.hall.LaneLayout;
import org.drillwright.plan.roster.Hall;
import org.drillwright.plan.rounds.Method;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.page.Box;
import org.drillwright.print.page.LineWeight;
import org.drillwright.print.page.Type;

/**
 * The plan of a hall. In each lane that is used its place; where a line walks, a filled circle for who stands and an open one
 * for who moves on.
 *
 * @param scale so many centimetres of the hall to one of paper
 */
record HallDrawing(Floor floor, Method method, HandType type, int scale, HandWords words) {

    /** On the paper, in points. */
    private record Spot(double x, double y) {}

    /** Between the two of a pair, in centimetres. */
    private static final int APART = 250;

    private static final double RADIUS = 3;

    /** Places, in points; less where a lane is too narrow for it. */
    private static final double PLACE = 22;

    /** The bar that tells how long so much of the hall is, in centimetres. */
    private static final int BAR = 500;

    private static final double TICK = 3;

    static double points(int centimetres, int scale) {
        return Millimetres.toPoints(10.0 * centimetres / scale);
    }

    private double points(int centimetres) {
        return points(centimetres, scale);
    }

    Box block() {
        Hall hall = floor.layout().hall();
        Rectangle box = new Rectangle(0, 0, points(hall.length()), points(hall.width()));
        List<Mark> marks = new ArrayList<>();
        marks.add(Mark.Shape.stroked(Outline.box(box), LineWeight.HEAVY.width(), Ink.BLACK));
        for (int at = 0; at < floor.lanes().size(); at++) {
            lane(at, marks);
        }
        for (int at = 1; at < floor.places().size(); at++) {
            arrow(at, marks);
        }
        Type small = type.foot();
        double y = box.bottom() + 2.2 * small.size();
        bar(box.right() - points(BAR), y, small, marks);
        Rectangle all = new Rectangle(0, 0, box.width(), y);
        Node figure = new Node.Figure(
                words.text(HandWord.HALL_PLAN, new HallSentences(words).lanes(floor.layout())), all, marks);
        return Box.of(all.height() + type.words().size(), figure);
    }

    private void bar(double x, double y, Type small, List<Mark> marks) {
        double end = x + points(BAR);
        marks.add(new Mark.Line(x, y - TICK, end, y - TICK, 1, Ink.BLACK));
        marks.add(new Mark.Line(x, y - 2 * TICK, x, y, 1, Ink.BLACK));
        marks.add(new Mark.Line(end, y - 2 * TICK, end, y, 1, Ink.BLACK));
        String length = "5 m";
        double left = (x + end - small.width(Face.REGULAR, length)) / 2;
        marks.add(small.line(Face.REGULAR, length, left, y - 2 * TICK));
    }

    private void lane(int at, List<Mark> marks) {
        LaneLayout.Lane lane = floor.lanes().get(at);
        Rectangle box = new Rectangle(points(lane.x()), points(lane.y()), points(lane.length()), points(lane.width()));
        boolean used = at < floor.places().size();
        marks.add(Mark.Shape.stroked(Outline.box(box), used ? 1 : LineWeight.THIN.width(), Ink.BLACK));
        if (!used) {
            return;
        }
        if (method.isWalked()) {
            marks.add(Mark.Shape.filled(Outline.circle(x(lane, -1), y(lane, -1), RADIUS), Ink.BLACK));
            marks.add(Mark.Shape.stroked(Outline.circle(x(lane, 1), y(lane, 1), RADIUS), 1, Ink.BLACK));
        }
        String places = String.join(
                "/", floor.places().get(at).stream().map(String::valueOf).toList());
        double size = Math.min(PLACE, 0.7 * Math.min(box.width(), box.height()));
        Type set = new Type(type.faces(), size);
        marks.add(set.line(
                Face.BOLD, places, x(lane, 0) - set.width(Face.BOLD, places) / 2, y(lane, 0) + set.capHeight() / 2));
    }

    /** Along a lane: -1 where one stands, 1 where the other does, 0 between them. */
    private double x(LaneLayout.Lane lane, int end) {
        int off = lane.length() > lane.width() ? end * Math.min(APART, lane.length() - 60) / 2 : 0;
        return points(lane.x() + lane.length() / 2 + off);
    }

    private double y(LaneLayout.Lane lane, int end) {
        int off = lane.length() > lane.width() ? 0 : end * Math.min(APART, lane.width() - 60) / 2;
        return points(lane.y() + lane.width() / 2 + off);
    }

    /** How one goes from a lane to the next; only where the movement is along the places. */
    private void arrow(int at, List<Mark> marks) {
        LaneLayout.Lane low = floor.lanes().get(at - 1);
        LaneLayout.Lane high = floor.lanes().get(at);
        if (method == Method.TWO_LINES) {
            arrow(low, high, marks);
        }
    }

    private void arrow(LaneLayout.Lane from, LaneLayout.Lane to, List<Mark> marks) {
        List<Spot> way = way(from, to);
        Spot last = way.get(way.size() - 2);
        Spot end = way.get(way.size() - 1);
        double length = between(last, end);
        double ux = (end.x() - last.x()) / length;
        double uy = (end.y() - last.y()) / length;
        Spot tip = towards(end, last, RADIUS + 2);
        double head = 5;
        for (int at = 1; at < way.size(); at++) {
            Spot one = at == 1 ? towards(way.get(0), way.get(1), RADIUS + 1) : way.get(at - 1);
            Spot other = at == way.size() - 1 ? tip : way.get(at);
            marks.add(new Mark.Line(one.x(), one.y(), other.x(), other.y(), 1, Ink.BLACK));
        }
        marks.add(Mark.Shape.filled(
                Outline.polygon(
                        tip.x(),
                        tip.y(),
                        tip.x() - head * ux - 0.5 * head * uy,
                        tip.y() - head * uy + 0.5 * head * ux,
                        tip.x() - head * ux + 0.5 * head * uy,
                        tip.y() - head * uy - 0.5 * head * ux),
                Ink.BLACK));
    }

    /** Straight, or out between the lanes and along them where somebody stands in the way. */
    private List<Spot> way(LaneLayout.Lane from, LaneLayout.Lane to) {
        Spot one = new Spot(x(from, 1), y(from, 1));
        Spot other = new Spot(x(to, 1), y(to, 1));
        List<List<Spot>> ways = new ArrayList<>(List.of(List.of(one, other)));
        double out = points((hall().laneWidth() + hall().sideGap()) / 2);
        for (double side : List.of(out, -out)) {
            ways.add(List.of(one, new Spot(one.x(), one.y() + side), new Spot(other.x(), one.y() + side), other));
            ways.add(List.of(one, new Spot(one.x() + side, one.y()), new Spot(one.x() + side, other.y()), other));
        }
        return ways.stream().filter(way -> isFree(way, one, other)).findFirst().orElse(ways.get(0));
    }

    private boolean isFree(List<Spot> way, Spot one, Spot other) {
        for (int at = 0; at < floor.places().size(); at++) {
            for (int end : List.of(-1, 1)) {
                Spot person =
                        new Spot(x(floor.lanes().get(at), end), y(floor.lanes().get(at), end));
                boolean walks = between(person, one) < 1 || between(person, other) < 1;
                for (int part = 1; !walks && part < way.size(); part++) {
                    if (between(person, way.get(part - 1), way.get(part)) < 2 * RADIUS) {
                        return false;
                    }
                }
            }
        }
        return way.stream()
                .allMatch(corner -> corner.x() > 0
                        && corner.y() > 0
                        && corner.x() < points(hall().length())
                        && corner.y() < points(hall().width()));
    }

    private Hall hall() {
        return floor.layout().hall();
    }

    private static double between(Spot one, Spot other) {
        return Math.hypot(one.x() - other.x(), one.y() - other.y());
    }

    /** From a point to the nearest of a line's part. */
    private static double between(Spot point, Spot start, Spot end) {
        double length = between(start, end);
        if (length == 0) {
            return between(point, start);
        }
        double along =
                ((point.x() - start.x()) * (end.x() - start.x()) + (point.y() - start.y()) * (end.y() - start.y()))
                        / length;
        return between(point, towards(start, end, Math.max(0, Math.min(length, along))));
    }

    private static Spot towards(Spot start, Spot end, double by) {
        double length = between(start, end);
        return length == 0
                ? start
                : new Spot(
                        start.x() + (end.x() - start.x()) * by / length,
                        start.y() + (end.y() - start.y()) * by / length);
    }
}
