package org.drillwright.print.diagram.stage;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.diagram.curve.Dot;
import org.drillwright.print.diagram.curve.Smooth;
import org.drillwright.print.diagram.curve.Tube;
import org.drillwright.print.diagram.figure.Gauge;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.Segment;

/** The signs beside figures. They shrink less than figures do, so that a copy of a copy still has them. */
final class MotionSigns {

    private static final int POINTS = 8;

    private static final double HEAD = 1.9;

    private final Gauge gauge;

    public MotionSigns(Gauge gauge) {
        this.gauge = gauge;
    }

    private double mark() {
        return gauge.mark();
    }

    /** A stroke that lands. */
    List<Mark> star(Dot at, boolean onBlack) {
        double outer = 1.5 * mark();
        List<Dot> corners = new ArrayList<>();
        List<Dot> around = new ArrayList<>();
        for (int point = 0; point < 2 * POINTS; point++) {
            double angle = Math.PI * point / POINTS;
            Dot ray = new Dot(Math.cos(angle), Math.sin(angle));
            corners.add(at.plus(ray.times(point % 2 == 0 ? outer : 0.45 * outer)));
            around.add(at.plus(ray.times(outer + gauge.halo())));
        }
        List<Segment> white = onBlack ? Smooth.closed(around) : closed(corners);
        List<Mark> marks = new ArrayList<>();
        if (onBlack) {
            marks.add(Mark.Shape.filled(white, Ink.WHITE));
        } else {
            marks.add(new Mark.Contour(white, 2 * gauge.halo(), Ink.WHITE));
        }
        marks.add(Mark.Shape.filled(closed(corners), Ink.BLACK));
        return marks;
    }

    private static List<Segment> closed(List<Dot> corners) {
        List<Dot> round = new ArrayList<>(corners);
        round.add(corners.get(0));
        return Smooth.straight(round);
    }

    /** Rays over a place where steel meets steel. */
    List<Mark> ticks(Dot at, int count) {
        List<Mark> marks = new ArrayList<>();
        double first = -90 - 32 * (count - 1) / 2.0;
        for (int tick = 0; tick < count; tick++) {
            double angle = Math.toRadians(first + 32 * tick);
            Dot ray = new Dot(Math.cos(angle), Math.sin(angle));
            List<Segment> path =
                    Smooth.straight(List.of(at.plus(ray.times(1.25 * mark())), at.plus(ray.times(2.25 * mark()))));
            marks.add(new Mark.Contour(path, thin() + 2 * gauge.halo(), Ink.WHITE));
            marks.add(new Mark.Contour(path, thin(), Ink.BLACK));
        }
        return marks;
    }

    /** Blades that touch; the aim of a stroke that does not arrive. */
    List<Mark> ring(Dot at) {
        double radius = 0.95 * mark();
        return List.of(
                Mark.Shape.filled(Outline.circle(at.x(), at.y(), radius + thin() / 2 + gauge.halo()), Ink.WHITE),
                Mark.Shape.stroked(Outline.circle(at.x(), at.y(), radius), 1.2 * thin(), Ink.BLACK));
    }

    /** A point that was carried aside. */
    List<Mark> dot(Dot at) {
        return List.of(
                Mark.Shape.filled(Outline.circle(at.x(), at.y(), mark() + gauge.halo()), Ink.WHITE),
                Mark.Shape.filled(Outline.circle(at.x(), at.y(), mark()), Ink.BLACK));
    }

    /** Along dots, with a head at the last one. */
    List<Mark> arrow(List<Dot> way) {
        return arrow(way, 1.25 * thin());
    }

    List<Mark> arrow(List<Dot> way, double width) {
        Dot tip = way.get(way.size() - 1);
        double head = HEAD * mark();
        List<Dot> shaft = new ArrayList<>(way.subList(0, way.size() - 1));
        while (shaft.size() > 1 && shaft.get(shaft.size() - 1).distance(tip) < 0.9 * head) {
            shaft.remove(shaft.size() - 1);
        }
        Dot along = tip.minus(shaft.get(shaft.size() - 1)).unit();
        Dot neck = tip.minus(along.times(0.8 * head));
        if (shaft.get(shaft.size() - 1).distance(tip) > 0.8 * head) {
            shaft.add(neck);
        }
        List<Segment> triangle = head(tip, along, head);
        List<Mark> marks = new ArrayList<>();
        if (shaft.size() > 1) {
            marks.add(new Mark.Contour(Smooth.open(shaft), width + 2 * gauge.halo(), Ink.WHITE));
        }
        marks.add(new Mark.Contour(triangle, 2 * gauge.halo(), Ink.WHITE));
        if (shaft.size() > 1) {
            marks.add(new Mark.Contour(Smooth.open(shaft), width, Ink.BLACK));
        }
        marks.add(Mark.Shape.filled(triangle, Ink.BLACK));
        return marks;
    }

    /** A triangle that points somewhere. */
    static List<Segment> head(Dot tip, Dot along, double length) {
        Dot base = tip.minus(along.times(length));
        Dot wide = along.turned().times(0.40 * length);
        return closed(List.of(tip, base.plus(wide), base.minus(wide)));
    }

    /** A dashed line, a dash at both ends. */
    List<Mark> dashes(Dot from, Dot to, double width, double length) {
        int dashes = Math.max(1, (int) Math.round((from.distance(to) / length + 1) / 2));
        double piece = 1.0 / (2 * dashes - 1);
        List<Mark> marks = new ArrayList<>();
        for (int at = 0; at < dashes; at++) {
            Dot begin = from.towards(to, 2 * at * piece);
            Dot end = from.towards(to, (2 * at + 1) * piece);
            marks.add(new Mark.Line(begin.x(), begin.y(), end.x(), end.y(), width, Ink.BLACK));
        }
        return marks;
    }

    /** A print of a shoe that points to the right, its middle here. */
    List<Mark> shoe(Dot at) {
        double r = mark();
        Tube sole = new Tube(List.of(
                new Tube.Disc(at.plus(new Dot(-0.30 * r, 0)), 0.50 * r),
                new Tube.Disc(at.plus(new Dot(0.65 * r, 0)), 0.78 * r),
                new Tube.Disc(at.plus(new Dot(1.25 * r, 0)), 0.66 * r)));
        Tube heel = new Tube(List.of(
                new Tube.Disc(at.plus(new Dot(-1.62 * r, 0)), 0.56 * r),
                new Tube.Disc(at.plus(new Dot(-1.50 * r, 0)), 0.56 * r)));
        double clear = 1.2 * r;
        return List.of(
                new Mark.Contour(
                        Smooth.straight(List.of(at.plus(new Dot(-1.7 * r, 0)), at.plus(new Dot(1.5 * r, 0)))),
                        2 * clear,
                        Ink.WHITE),
                Mark.Shape.filled(sole.closed(), Ink.BLACK),
                Mark.Shape.filled(heel.closed(), Ink.BLACK));
    }

    /** A question mark, so high, its middle here; drawn, so that no font is needed. */
    List<Mark> question(Dot at, double height, boolean onBlack) {
        double h = height;
        double[][] hook = {
            {-0.24, -0.26},
            {-0.18, -0.42},
            {0.02, -0.49},
            {0.21, -0.42},
            {0.25, -0.24},
            {0.14, -0.08},
            {0.02, 0.03},
            {0, 0.18}
        };
        List<Dot> dots = new ArrayList<>();
        for (double[] step : hook) {
            dots.add(at.plus(new Dot(step[0] * h, step[1] * h * 0.95)));
        }
        double width = 0.15 * h;
        Ink ink = onBlack ? Ink.WHITE : Ink.BLACK;
        Ink halo = onBlack ? Ink.BLACK : Ink.WHITE;
        Dot point = at.plus(new Dot(0, 0.42 * h));
        List<Segment> curve = Smooth.open(dots);
        return List.of(
                new Mark.Contour(curve, width + 2 * gauge.halo(), halo),
                Mark.Shape.filled(Outline.circle(point.x(), point.y(), 0.09 * h + gauge.halo()), halo),
                new Mark.Contour(curve, width, ink),
                Mark.Shape.filled(Outline.circle(point.x(), point.y(), 0.09 * h), ink));
    }

    /** Strokes that rise to the right, as far as they lie in a box. */
    List<Mark> hatch(Rectangle box) {
        double step = gauge.pitch() * Math.sqrt(2);
        double edge = 0.6 * thin();
        double left = box.x() + edge;
        double top = box.y() + edge;
        double right = box.right() - edge;
        double bottom = box.bottom() - edge;
        List<Mark> strokes = new ArrayList<>();
        for (double sum = left + top + 0.7 * step; sum < right + bottom; sum += step) {
            double x1 = Math.max(left, sum - bottom);
            double x2 = Math.min(right, sum - top);
            if (x2 - x1 > 0.8) {
                strokes.add(new Mark.Line(x1, sum - x1, x2, sum - x2, gauge.hatch(), Ink.BLACK));
            }
        }
        return strokes;
    }

    /** The same with an edge, for the legend. */
    List<Mark> hatched(double size) {
        Rectangle box = new Rectangle(-size / 2, -size / 2, size, size);
        List<Mark> marks = new ArrayList<>(hatch(box));
        marks.add(Mark.Shape.stroked(Outline.box(box), thin(), Ink.BLACK));
        return marks;
    }

    /** A foot that moved, both feet, feet that cross, a jump and a stamp, for the legend. */
    List<Mark> feet() {
        double r = mark();
        List<Mark> marks = new ArrayList<>(foot(-20 * r, -14 * r, 0, 1));
        marks.addAll(foot(-11.5 * r, -4.5 * r, 0, 2));
        marks.addAll(crossing(-2 * r, 5 * r, 0));
        marks.addAll(hop(7.5 * r, 12.5 * r, 0));
        marks.addAll(stamp(16.5 * r, -1.5 * r));
        return marks;
    }

    /** From a bar at the old place to as many heads as feet moved. */
    List<Mark> foot(double from, double to, double y, int heads) {
        double high = 0.75 * mark();
        List<Mark> marks = new ArrayList<>(List.of(new Mark.Line(from, y - high, from, y + high, thin(), Ink.BLACK)));
        marks.addAll(shaft(from, to, y, heads));
        return marks;
    }

    /** Both feet, one past the other: a cross at the old place. */
    List<Mark> crossing(double from, double to, double y) {
        double arm = 0.75 * mark();
        List<Mark> marks = new ArrayList<>(List.of(
                new Mark.Line(from - arm, y - arm, from + arm, y + arm, thin(), Ink.BLACK),
                new Mark.Line(from - arm, y + arm, from + arm, y - arm, thin(), Ink.BLACK)));
        marks.addAll(shaft(from, to, y, 2));
        return marks;
    }

    /** Under a foot that strikes the floor where it is. */
    List<Mark> stamp(double x, double floor) {
        double r = mark();
        List<Mark> marks = new ArrayList<>();
        for (int ray = -1; ray <= 1; ray++) {
            double angle = Math.toRadians(90 - 45 * ray);
            marks.add(new Mark.Line(
                    x + 1.5 * r * Math.cos(angle),
                    floor + 0.9 * r * Math.sin(angle),
                    x + 3.6 * r * Math.cos(angle),
                    floor + 2.6 * r * Math.sin(angle),
                    1.3 * thin(),
                    Ink.BLACK));
        }
        return marks;
    }

    private List<Mark> shaft(double from, double to, double y, int heads) {
        double way = Math.signum(to - from);
        double head = Math.min(HEAD * mark(), Math.abs(to - from) * 0.45);
        List<Mark> marks = new ArrayList<>();
        double neck = to - way * (heads * head - 0.3);
        if ((neck - from) * way > 0) {
            marks.add(new Mark.Line(from, y, neck, y, 0.62 * mark(), Ink.BLACK));
        }
        for (int at = 0; at < heads; at++) {
            marks.add(Mark.Shape.filled(head(new Dot(to - way * at * head, y), new Dot(way, 0), head), Ink.BLACK));
        }
        return marks;
    }

    /** A jump. */
    List<Mark> hop(double from, double to, double y) {
        double low = y + 0.8 * mark();
        double high = y - 1.0 * mark();
        double head = Math.min(1.7 * mark(), Math.abs(to - from) * 0.45);
        Dot tip = new Dot(to, low);
        Dot along = new Dot(Math.signum(to - from), 1.3).unit();
        List<Dot> arc = List.of(
                new Dot(from, low),
                new Dot(from + 0.22 * (to - from), y - 0.5 * mark()),
                new Dot(from + 0.5 * (to - from), high),
                tip.minus(along.times(0.8 * head)));
        return List.of(
                new Mark.Contour(Smooth.open(arc), 0.5 * mark(), Ink.BLACK),
                Mark.Shape.filled(head(tip, along, head), Ink.BLACK));
    }

    /** From front toe to front toe; broken where it is not to scale. */
    List<Mark> bar(double from, double to, double y, boolean whole) {
        double high = 1.1 * mark();
        double width = Math.max(0.7, 1.2 * gauge.line());
        List<Mark> bar = new ArrayList<>();
        bar.add(new Mark.Line(from, y - high, from, y + high, width, Ink.BLACK));
        bar.add(new Mark.Line(to, y - high, to, y + high, width, Ink.BLACK));
        if (whole) {
            bar.add(new Mark.Line(from, y, to, y, width, Ink.BLACK));
        } else {
            bar.addAll(dashes(new Dot(from, y), new Dot(to, y), width, 1.2 * mark()));
        }
        return bar;
    }

    /** The bar with one foot action, for the legend. */
    List<Mark> bar() {
        double r = mark();
        List<Mark> marks = new ArrayList<>(bar(-9 * r, 9 * r, 0, true));
        marks.addAll(shoe(new Dot(0, 0)));
        return marks;
    }

    /** The width of a thin stroke, in points. */
    double thin() {
        return Math.max(0.55, 1.05 * gauge.line());
    }
}
