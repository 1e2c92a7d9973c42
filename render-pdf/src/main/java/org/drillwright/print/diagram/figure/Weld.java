package org.drillwright.print.diagram.figure;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;

/** Draws parts so that they look like one: strokes first, fills over their inner halves. No areas have to be cut. */
final class Weld {

    private final Gauge gauge;

    Weld(Gauge gauge) {
        this.gauge = gauge;
    }

    /** One outline round all parts, in a white halo. */
    List<Mark> weld(List<BodyPart> parts) {
        List<Mark> marks = new ArrayList<>();
        double line = 2 * gauge.line();
        parts.forEach(part -> marks.add(new Mark.Contour(part.outline(), line + 2 * gauge.halo(), Ink.WHITE)));
        parts.forEach(part -> marks.add(new Mark.Contour(part.outline(), line, Ink.BLACK)));
        parts.forEach(part -> marks.add(Mark.Shape.filled(part.area(), part.ink())));
        return marks;
    }

    /** A part that grows on to one of its own ink drawn before. */
    List<Mark> on(BodyPart part) {
        return List.of(
                new Mark.Contour(part.outline(), 2 * gauge.line(), Ink.BLACK),
                Mark.Shape.filled(part.area(), part.ink()));
    }

    /** A part over those drawn before: white beside its open outline, in which it is filled. */
    List<Mark> over(BodyPart part) {
        double white = part.ink().equals(Ink.BLACK) ? gauge.seam() : gauge.halo();
        return over(part, white);
    }

    /** The same with so much white beside it. */
    List<Mark> over(BodyPart part, double white) {
        double line = 2 * gauge.line();
        return List.of(
                new Mark.Contour(part.beside(), line + 2 * white, Ink.WHITE),
                new Mark.Contour(part.open(), line, Ink.BLACK),
                Mark.Shape.filled(part.area(), part.ink()));
    }
}
