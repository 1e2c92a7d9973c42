package org.drillwright.print.diagram.curve;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Segment;

/**
 * Smooth curves through dots, as cubics: centripetal Catmull-Rom, which makes neither loops nor cusps between dots
 * (Yuksel, Schaefer, Keyser: Parameterization and applications of Catmull-Rom curves, 2011, from memory).
 */
public final class Smooth {

    /** Dots nearer to each other than this, in points, are one. */
    private static final double SAME = 1e-6;

    private Smooth() {}

    /** Through the dots, round to the first one. */
    public static List<Segment> closed(List<Dot> through) {
        List<Dot> dots = distinct(through);
        if (dots.size() > 1 && dots.get(0).distance(dots.get(dots.size() - 1)) < SAME) {
            dots.remove(dots.size() - 1);
        }
        int n = dots.size();
        double[] steps = new double[n];
        for (int at = 0; at < n; at++) {
            steps[at] = dots.get(at).distance(dots.get((at + 1) % n));
        }
        List<Segment> segments = new ArrayList<>(n + 1);
        segments.add(start(dots.get(0)));
        for (int at = 0; at < n; at++) {
            int before = (at + n - 1) % n;
            int next = (at + 1) % n;
            segments.add(curve(
                    dots.get(before),
                    dots.get(at),
                    dots.get(next),
                    dots.get((at + 2) % n),
                    steps[before],
                    steps[at],
                    steps[next]));
        }
        return segments;
    }

    /** Through the dots, from the first to the last. */
    public static List<Segment> open(List<Dot> through) {
        List<Dot> dots = distinct(through);
        List<Segment> segments = new ArrayList<>(List.of(start(dots.get(0))));
        int last = dots.size() - 1;
        double step = 0;
        for (int at = 0; at < last; at++) {
            Dot from = dots.get(at);
            Dot to = dots.get(at + 1);
            Dot before = at == 0 ? from.minus(to.minus(from)) : dots.get(at - 1);
            Dot after = at + 1 == last ? to.plus(to.minus(from)) : dots.get(at + 2);
            double come = at == 0 ? from.distance(before) : step;
            step = from.distance(to);
            segments.add(curve(before, from, to, after, come, step, to.distance(after)));
        }
        return segments;
    }

    /** Straight from dot to dot. */
    public static List<Segment> straight(List<Dot> dots) {
        List<Segment> segments = new ArrayList<>(List.of(start(dots.get(0))));
        dots.stream().skip(1).forEach(dot -> segments.add(new Segment.To(dot.x(), dot.y())));
        return segments;
    }

    /** Dots on the curve through dots, so many between each two. */
    public static List<Dot> sampled(List<Dot> through, int between) {
        List<Dot> dots = new ArrayList<>();
        Dot from = through.get(0);
        dots.add(from);
        for (Segment segment : open(through)) {
            if (segment instanceof Segment.Curve curve) {
                for (int at = 1; at <= between; at++) {
                    dots.add(on(from, curve, at / (double) between));
                }
                from = new Dot(curve.x(), curve.y());
            }
        }
        return dots;
    }

    /** On a cubic, 0 being its beginning and 1 its end. */
    public static Dot on(Dot from, Segment.Curve curve, double share) {
        double rest = 1 - share;
        double a = rest * rest * rest;
        double b = 3 * rest * rest * share;
        double c = 3 * rest * share * share;
        double d = share * share * share;
        return new Dot(
                a * from.x() + b * curve.x1() + c * curve.x2() + d * curve.x(),
                a * from.y() + b * curve.y1() + c * curve.y2() + d * curve.y());
    }

    private static List<Dot> distinct(List<Dot> through) {
        List<Dot> dots = new ArrayList<>();
        for (Dot dot : through) {
            if (dots.isEmpty() || dots.get(dots.size() - 1).distance(dot) >= SAME) {
                dots.add(dot);
            }
        }
        return dots;
    }

    private static Segment start(Dot dot) {
        return new Segment.Start(dot.x(), dot.y());
    }

    /**
     * @param come the distance from {@code before} to {@code from}
     * @param step the distance on to {@code to}
     * @param go the distance on to {@code after}
     */
    private static Segment curve(Dot before, Dot from, Dot to, Dot after, double come, double step, double go) {
        Dot first = handle(before, from, to, come, step);
        Dot second = handle(after, to, from, go, step);
        return new Segment.Curve(first.x(), first.y(), second.x(), second.y(), to.x(), to.y());
    }

    /**
     * The control point beside {@code at} on the way to {@code to}.
     *
     * @param near the distance to {@code before}
     * @param far the distance to {@code to}
     */
    private static Dot handle(Dot before, Dot at, Dot to, double near, double far) {
        if (near < SAME) {
            return at;
        }
        double root = Math.sqrt(near * far);
        double own = 2 * near + 3 * root + far;
        double share = 1 / (3 * (near + root));
        return new Dot(
                share * (near * to.x() - far * before.x() + own * at.x()),
                share * (near * to.y() - far * before.y() + own * at.y()));
    }
}
