package org.drillwright.print.diagram.stage;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Segment;

/**
 * Marks with all lengths to a hundredth of a point, 3.5 µm: no printer shows less, and equal pictures are equal. A part of a
 * body is drawn up to five times, as halo, outline and area: what is the same of it is kept once.
 */
final class Rounded {

    private static final double HUNDREDTHS = 100;

    private final Map<Segment, Segment> kept = new HashMap<>();

    private Rounded() {}

    static List<Mark> marks(List<Mark> marks) {
        return new Rounded().all(marks);
    }

    private List<Mark> all(List<Mark> marks) {
        return marks.stream().map(this::mark).toList();
    }

    private Mark mark(Mark mark) {
        if (mark instanceof Mark.Named named) {
            return new Mark.Named(named.name(), all(named.marks()));
        }
        if (mark instanceof Mark.Line line) {
            return new Mark.Line(
                    to(line.x1()), to(line.y1()), to(line.x2()), to(line.y2()), to(line.width()), line.ink());
        }
        if (mark instanceof Mark.Contour contour) {
            return new Mark.Contour(outline(contour.path()), to(contour.width()), contour.ink());
        }
        if (mark instanceof Mark.Shape shape) {
            return new Mark.Shape(
                    outline(shape.outline()),
                    shape.fill(),
                    shape.stroke().map(stroke -> new Mark.Stroke(to(stroke.width()), stroke.ink())));
        }
        return mark;
    }

    private List<Segment> outline(List<Segment> outline) {
        return outline.stream()
                .map(Rounded::segment)
                .map(segment -> kept.computeIfAbsent(segment, same -> same))
                .toList();
    }

    private static Segment segment(Segment segment) {
        if (segment instanceof Segment.Curve curve) {
            return new Segment.Curve(
                    to(curve.x1()), to(curve.y1()), to(curve.x2()), to(curve.y2()), to(curve.x()), to(curve.y()));
        }
        if (segment instanceof Segment.To line) {
            return new Segment.To(to(line.x()), to(line.y()));
        }
        Segment.Start start = (Segment.Start) segment;
        return new Segment.Start(to(start.x()), to(start.y()));
    }

    private static double to(double points) {
        return Math.round(points * HUNDREDTHS) / HUNDREDTHS;
    }
}
