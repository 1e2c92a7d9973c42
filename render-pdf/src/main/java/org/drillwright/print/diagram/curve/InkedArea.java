package org.drillwright.print.diagram.curve;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.Segment;

/** What of the paper is covered by marks; what is drawn in white only is paper still. */
public final class InkedArea {

    /** Dots on each curve. */
    private static final int BETWEEN = 3;

    /** Dots of outlines: x, y, and how far the ink goes beyond. */
    private final List<double[]> edges = new ArrayList<>();

    private InkedArea() {}

    /** There must be a black mark. */
    public static InkedArea of(List<Mark> marks) {
        InkedArea cover = new InkedArea();
        marks.forEach(cover::collect);
        return cover;
    }

    /** The same with more marks. */
    public InkedArea and(List<Mark> marks) {
        InkedArea cover = new InkedArea();
        cover.edges.addAll(edges);
        marks.forEach(cover::collect);
        return cover;
    }

    public Rectangle box() {
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (double[] edge : edges) {
            left = Math.min(left, edge[0] - edge[2]);
            right = Math.max(right, edge[0] + edge[2]);
            top = Math.min(top, edge[1] - edge[2]);
            bottom = Math.max(bottom, edge[1] + edge[2]);
        }
        return new Rectangle(left, top, right - left, bottom - top);
    }

    /** The highest ink between two places on the paper; positive infinity if there is none. */
    public double top(double left, double right) {
        double top = Double.POSITIVE_INFINITY;
        for (double[] edge : edges) {
            if (edge[0] + edge[2] >= left && edge[0] - edge[2] <= right) {
                top = Math.min(top, edge[1] - edge[2]);
            }
        }
        return top;
    }

    private void collect(Mark mark) {
        if (mark instanceof Mark.Named named) {
            named.marks().forEach(this::collect);
        } else if (mark instanceof Mark.Line line && line.ink().equals(Ink.BLACK)) {
            add(line);
        } else if (mark instanceof Mark.Contour contour && contour.ink().equals(Ink.BLACK)) {
            add(contour.path(), contour.width() / 2);
        } else if (mark instanceof Mark.Shape shape) {
            shape.fill().filter(Ink.BLACK::equals).ifPresent(ink -> add(shape.outline(), 0));
            shape.stroke()
                    .filter(stroke -> stroke.ink().equals(Ink.BLACK))
                    .ifPresent(stroke -> add(shape.outline(), stroke.width() / 2));
        }
    }

    /** Its ends are cut square. */
    private void add(Mark.Line line) {
        Dot from = new Dot(line.x1(), line.y1());
        Dot to = new Dot(line.x2(), line.y2());
        Dot wide = to.minus(from).unit().turned().times(line.width() / 2);
        List.of(from.plus(wide), from.minus(wide), to.plus(wide), to.minus(wide))
                .forEach(corner -> add(corner, 0));
    }

    private void add(Dot dot, double beyond) {
        edges.add(new double[] {dot.x(), dot.y(), beyond});
    }

    private void add(List<Segment> outline, double beyond) {
        dots(outline).forEach(dot -> add(dot, beyond));
    }

    /** Dots along outlines, so near to each other that nothing of note lies between them. */
    public static List<Dot> dots(List<Segment> outline) {
        List<Dot> dots = new ArrayList<>();
        Dot from = new Dot(0, 0);
        for (Segment segment : outline) {
            if (segment instanceof Segment.Curve curve) {
                for (int at = 1; at <= BETWEEN; at++) {
                    dots.add(Smooth.on(from, curve, at / (double) BETWEEN));
                }
                from = new Dot(curve.x(), curve.y());
            } else if (segment instanceof Segment.To to) {
                Dot end = new Dot(to.x(), to.y());
                for (int at = 1; at <= BETWEEN; at++) {
                    dots.add(from.towards(end, at / (double) BETWEEN));
                }
                from = end;
            } else if (segment instanceof Segment.Start start) {
                from = new Dot(start.x(), start.y());
                dots.add(from);
            }
        }
        return dots;
    }
}
