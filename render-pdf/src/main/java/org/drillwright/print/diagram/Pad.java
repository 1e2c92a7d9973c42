package org.drillwright.print.diagram;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Outline;

/**
 * Draws in units of a picture, of which it is {@link #WIDTH} wide. Black on white only, so that a photocopy of a
 * photocopy still serves.
 *
 * @param x where the picture's left edge is, in points
 * @param y where the origin of what is drawn is, in points
 * @param unit in points
 */
record Pad(double x, double y, double unit) {

    static final double WIDTH = 100;

    /** The thinnest stroke, in points: half a point is what common printers and copiers still hold. */
    private static final double HAIR = 0.5;

    /** The height of a question mark of DejaVu Sans Condensed Bold, and its advance, as shares of the type size. */
    private static final double CAP = 0.742;

    private static final double QUESTION = 0.522;

    /** The same paper, with its origin so many units to the right and down. */
    Pad from(double dx, double dy) {
        return new Pad(x + dx * unit, y + dy * unit, unit);
    }

    Mark line(double x1, double y1, double x2, double y2, double width) {
        return new Mark.Line(x(x1), y(y1), x(x2), y(y2), stroke(width), Ink.BLACK);
    }

    /** Strokes and gaps of one length each. */
    List<Mark> dashes(double x1, double y1, double x2, double y2, double width, double length) {
        double whole = Math.hypot(x2 - x1, y2 - y1);
        int dashes = Math.max(1, (int) Math.round((whole / length + 1) / 2));
        double piece = 1.0 / (2 * dashes - 1);
        Mark[] marks = new Mark[dashes];
        for (int at = 0; at < dashes; at++) {
            double start = 2 * at * piece;
            double end = start + piece;
            marks[at] = line(
                    x1 + start * (x2 - x1), y1 + start * (y2 - y1), x1 + end * (x2 - x1), y1 + end * (y2 - y1), width);
        }
        return Arrays.asList(marks);
    }

    /** A polygon: x and y by turns. */
    Mark filled(Ink ink, double... corners) {
        return Mark.Shape.filled(Outline.polygon(placed(corners)), ink);
    }

    Mark outlined(double width, double... corners) {
        return Mark.Shape.stroked(Outline.polygon(placed(corners)), stroke(width), Ink.BLACK);
    }

    Mark disc(double cx, double cy, double radius, Ink ink) {
        return Mark.Shape.filled(Outline.circle(x(cx), y(cy), radius * unit), ink);
    }

    Mark ring(double cx, double cy, double radius, double width) {
        return new Mark.Shape(
                Outline.circle(x(cx), y(cy), radius * unit),
                Optional.of(Ink.WHITE),
                Optional.of(new Mark.Stroke(stroke(width), Ink.BLACK)));
    }

    /** A question mark whose middle is here, so many units high. */
    Mark question(double cx, double cy, double height) {
        double size = height / CAP;
        return new Mark.Text(x(cx - size * QUESTION / 2), y(cy + height / 2), size * unit, Face.BOLD, "?", Ink.BLACK);
    }

    Box box(double width, double height) {
        return new Box(x, y, width * unit, height * unit);
    }

    double x(double units) {
        return x + units * unit;
    }

    double y(double units) {
        return y + units * unit;
    }

    private double stroke(double width) {
        return Math.max(HAIR, width * unit);
    }

    private double[] placed(double... corners) {
        double[] placed = new double[corners.length];
        for (int at = 0; at < corners.length; at += 2) {
            placed[at] = x(corners[at]);
            placed[at + 1] = y(corners[at + 1]);
        }
        return placed;
    }
}
