package org.drillwright.print.svg;

import java.util.List;
import org.drillwright.print.frame.Segment;

/** Outlines as short as they can be written: whole units, each step from where the last one ended. */
final class Path {

    /** In units. */
    private static final double NEAR = 0.5;

    private final double perPoint;
    private final StringBuilder text = new StringBuilder();
    private char command = ' ';
    private long x;
    private long y;

    /** @param perPoint units to a point */
    private Path(double perPoint) {
        this.perPoint = perPoint;
    }

    /** An outline, left as open as it is. */
    static String of(List<Segment> outline, double perPoint) {
        Path path = new Path(perPoint);
        Straight.of(outline, NEAR / perPoint).forEach(path::add);
        return path.text.toString();
    }

    private void add(Segment segment) {
        if (segment instanceof Segment.Start start) {
            command('M');
            x = units(start.x());
            y = units(start.y());
            number(x);
            number(y);
        } else if (segment instanceof Segment.To to) {
            command('l');
            step(to.x(), to.y());
            go(to.x(), to.y());
        } else if (segment instanceof Segment.Curve curve) {
            command('c');
            step(curve.x1(), curve.y1());
            step(curve.x2(), curve.y2());
            step(curve.x(), curve.y());
            go(curve.x(), curve.y());
        }
    }

    private long units(double length) {
        return Math.round(length * perPoint);
    }

    private void go(double newX, double newY) {
        x = units(newX);
        y = units(newY);
    }

    private void step(double newX, double newY) {
        number(units(newX) - x);
        number(units(newY) - y);
    }

    /** A command that is the same as the one before need not be said again. */
    private void command(char next) {
        if (next != command || next == 'M') {
            text.append(next);
            command = next;
        }
    }

    /** A sign parts it from the number before as well as a space does. */
    private void number(long number) {
        char last = text.charAt(text.length() - 1);
        if (number >= 0 && Character.isDigit(last)) {
            text.append(' ');
        }
        text.append(number);
    }
}
