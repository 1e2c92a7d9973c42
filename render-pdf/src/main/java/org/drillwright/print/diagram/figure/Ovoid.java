package org.drillwright.print.diagram.figure;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.diagram.curve.Dot;
import org.drillwright.print.diagram.curve.Smooth;
import org.drillwright.print.frame.Segment;
import org.drillwright.print.pose.body.Head;
import org.drillwright.print.pose.body.Point;

/** A head or a mask as an ellipsoid: its edge on paper, and caps cut off it. */
final class Ovoid {

    private static final int SAMPLES = 72;

    private final Point centre;
    private final Point front;
    private final Point side;
    private final Point up;
    private final Eye eye;

    /** Where the eye looks, in the coordinates of the ellipsoid as a unit sphere. */
    private final Point away;

    /** Half axes in metres: to the front, to the side, up. */
    Ovoid(Head head, Point half, Eye eye) {
        Point across = head.looking().cross(head.up());
        this.centre = head.centre();
        this.front = head.looking().times(half.x());
        this.side = across.times(half.y());
        this.up = head.up().times(half.z());
        this.eye = eye;
        Point ray = eye.camera().away();
        this.away = new Point(
                        ray.dot(head.looking()) / half.x(), ray.dot(across) / half.y(), ray.dot(head.up()) / half.z())
                .unit();
    }

    /** A place on it or in it, the unit sphere being its surface. */
    Dot see(Point unit) {
        return eye.see(at(unit));
    }

    Point at(Point unit) {
        return centre.plus(front.times(unit.x())).plus(side.times(unit.y())).plus(up.times(unit.z()));
    }

    List<Dot> edge() {
        return seen(circle(away, 0));
    }

    /** What is seen of it beyond a plane; empty if nothing is. */
    List<Segment> cap(Point normal, double beyond) {
        Point out = normal.unit();
        List<Point> edge = run(circle(away, 0), point -> point.dot(out) > beyond);
        List<Point> cut = run(circle(out, beyond), point -> point.dot(away) < 0);
        if (edge.isEmpty() || cut.isEmpty()) {
            List<Point> whole = edge.isEmpty() ? cut : edge;
            return whole.size() < 3 ? List.of() : Smooth.closed(seen(whole));
        }
        if (cut.size() == SAMPLES) {
            return Smooth.closed(seen(cut));
        }
        List<Dot> one = seen(edge);
        List<Dot> other = seen(cut);
        Dot last = one.get(one.size() - 1);
        if (last.distance(other.get(0)) > last.distance(other.get(other.size() - 1))) {
            java.util.Collections.reverse(other);
        }
        List<Segment> segments = new ArrayList<>(Smooth.open(one));
        segments.add(new Segment.To(other.get(0).x(), other.get(0).y()));
        segments.addAll(Smooth.open(other).subList(1, Smooth.open(other).size()));
        return segments;
    }

    private List<Dot> seen(List<Point> points) {
        List<Dot> dots = new ArrayList<>();
        int step = points.size() == SAMPLES ? 4 : 3;
        for (int at = 0; at < points.size(); at += step) {
            dots.add(see(points.get(at)));
        }
        if (points.size() < SAMPLES && (points.size() - 1) % step != 0) {
            dots.add(see(points.get(points.size() - 1)));
        }
        return dots;
    }

    /** On the unit sphere, the circle in a plane. */
    private static List<Point> circle(Point normal, double offset) {
        Point first = (Math.abs(normal.z()) < 0.9 ? Point.UP : new Point(1, 0, 0)).squareTo(normal);
        Point second = normal.cross(first);
        double radius = Math.sqrt(1 - offset * offset);
        List<Point> points = new ArrayList<>();
        for (int at = 0; at < SAMPLES; at++) {
            double angle = 2 * Math.PI * at / SAMPLES;
            points.add(normal.times(offset)
                    .plus(first.times(radius * Math.cos(angle)))
                    .plus(second.times(radius * Math.sin(angle))));
        }
        return points;
    }

    /** The stretch of a round that passes a test. */
    private static List<Point> run(List<Point> round, java.util.function.Predicate<Point> test) {
        int begin = 0;
        for (int at = 0; at < round.size(); at++) {
            boolean before = test.test(round.get((at + round.size() - 1) % round.size()));
            if (test.test(round.get(at)) && !before) {
                begin = at;
            }
        }
        List<Point> run = new ArrayList<>();
        for (int at = 0; at < round.size() && test.test(round.get((begin + at) % round.size())); at++) {
            run.add(round.get((begin + at) % round.size()));
        }
        return run;
    }
}
