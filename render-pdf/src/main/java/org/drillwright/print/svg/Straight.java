package org.drillwright.print.svg;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Segment;

/** Outlines with fewer pieces: what is nearer to a line than can be seen is that line. */
final class Straight {

    private final double near;

    private Straight(double near) {
        this.near = near;
    }

    /** @param near how far the outline may be moved anywhere for each of the two reasons there are, in its own unit */
    static List<Segment> of(List<Segment> outline, double near) {
        Straight straight = new Straight(near);
        return straight.joined(straight.flat(outline));
    }

    /** Curves that hardly bend. */
    private List<Segment> flat(List<Segment> outline) {
        List<Segment> flat = new ArrayList<>();
        Segment.Start from = new Segment.Start(0, 0);
        for (Segment segment : outline) {
            if (segment instanceof Segment.Curve curve && isFlat(from, curve)) {
                flat.add(new Segment.To(curve.x(), curve.y()));
            } else {
                flat.add(segment);
            }
            from = end(segment);
        }
        return flat;
    }

    private static Segment.Start end(Segment segment) {
        if (segment instanceof Segment.Curve curve) {
            return new Segment.Start(curve.x(), curve.y());
        }
        return segment instanceof Segment.To to ? new Segment.Start(to.x(), to.y()) : (Segment.Start) segment;
    }

    /** A cubic curve stays within three quarters of the distance of its control points from its chord. */
    private boolean isFlat(Segment.Start from, Segment.Curve curve) {
        Segment.Start to = new Segment.Start(curve.x(), curve.y());
        double most = near * 4 / 3;
        return distance(new Segment.Start(curve.x1(), curve.y1()), from, to) <= most
                && distance(new Segment.Start(curve.x2(), curve.y2()), from, to) <= most;
    }

    /** Of a point from the line that joins two others and ends at them. */
    private static double distance(Segment.Start point, Segment.Start from, Segment.Start to) {
        double dx = to.x() - from.x();
        double dy = to.y() - from.y();
        double square = dx * dx + dy * dy;
        double along = square == 0 ? 0 : ((point.x() - from.x()) * dx + (point.y() - from.y()) * dy) / square;
        double share = Math.max(0, Math.min(1, along));
        return Math.hypot(point.x() - from.x() - share * dx, point.y() - from.y() - share * dy);
    }

    /** Lines that follow each other, without the corners between them that hardly stand out. */
    private List<Segment> joined(List<Segment> outline) {
        List<Segment> joined = new ArrayList<>();
        List<Segment.Start> corners = new ArrayList<>();
        for (Segment segment : outline) {
            if (segment instanceof Segment.To) {
                corners.add(end(segment));
            } else {
                add(corners, joined);
                joined.add(segment);
                corners = new ArrayList<>(List.of(end(segment)));
            }
        }
        add(corners, joined);
        return joined;
    }

    private void add(List<Segment.Start> corners, List<Segment> joined) {
        if (corners.size() > 1) {
            between(corners, 0, corners.size() - 1, joined);
        }
    }

    /** The corner farthest out is kept, and those on both sides of it looked at alike. */
    private void between(List<Segment.Start> corners, int first, int last, List<Segment> joined) {
        int farthest = first;
        double most = near;
        for (int at = first + 1; at < last; at++) {
            double distance = distance(corners.get(at), corners.get(first), corners.get(last));
            if (distance > most) {
                most = distance;
                farthest = at;
            }
        }
        if (farthest == first) {
            joined.add(new Segment.To(corners.get(last).x(), corners.get(last).y()));
        } else {
            between(corners, first, farthest, joined);
            between(corners, farthest, last, joined);
        }
    }
}
