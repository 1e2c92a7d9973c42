package org.drillwright.print.diagram.curve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Segment;

/** What of the paper is covered by marks; what is drawn in white only is paper still. */
public final class Cover {

    /** Dots on each curve. */
    private static final int BETWEEN = 4;

    /** A dot of an outline, and how far the ink goes beyond it. */
    private record Edge(Dot at, double beyond) {}

    private final List<Edge> edges;

    private Cover(List<Edge> edges) {
        this.edges = edges;
    }

    /** There must be a black mark. */
    public static Cover of(List<Mark> marks) {
        List<Edge> edges = new ArrayList<>();
        marks.forEach(mark -> collect(mark, edges));
        return new Cover(edges);
    }

    public Box box() {
        double left = least(edge -> edge.at().x() - edge.beyond());
        double top = least(edge -> edge.at().y() - edge.beyond());
        double right = -least(edge -> -edge.at().x() - edge.beyond());
        double bottom = -least(edge -> -edge.at().y() - edge.beyond());
        return new Box(left, top, right - left, bottom - top);
    }

    /** The highest ink between two places on the paper; positive infinity if there is none. */
    public double top(double left, double right) {
        return edges.stream()
                .filter(edge ->
                        edge.at().x() + edge.beyond() >= left && edge.at().x() - edge.beyond() <= right)
                .mapToDouble(edge -> edge.at().y() - edge.beyond())
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private double least(java.util.function.ToDoubleFunction<Edge> side) {
        return edges.stream()
                .min(Comparator.comparingDouble(side))
                .map(side::applyAsDouble)
                .orElseThrow();
    }

    private static void collect(Mark mark, List<Edge> into) {
        if (mark instanceof Mark.Named named) {
            named.marks().forEach(part -> collect(part, into));
        } else if (mark instanceof Mark.Line line && line.ink().equals(Ink.BLACK)) {
            into.add(new Edge(new Dot(line.x1(), line.y1()), line.width() / 2));
            into.add(new Edge(new Dot(line.x2(), line.y2()), line.width() / 2));
        } else if (mark instanceof Mark.Contour contour && contour.ink().equals(Ink.BLACK)) {
            dots(contour.path()).forEach(dot -> into.add(new Edge(dot, contour.width() / 2)));
        } else if (mark instanceof Mark.Shape shape) {
            boolean black = shape.fill().filter(Ink.BLACK::equals).isPresent();
            double stroke = shape.stroke()
                    .filter(line -> line.ink().equals(Ink.BLACK))
                    .map(line -> line.width() / 2)
                    .orElse(-1.0);
            if (black || stroke >= 0) {
                dots(shape.outline()).forEach(dot -> into.add(new Edge(dot, Math.max(0, stroke))));
            }
        }
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
