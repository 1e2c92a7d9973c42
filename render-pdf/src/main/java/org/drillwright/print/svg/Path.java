package org.drillwright.print.svg;

import java.util.List;
import org.drillwright.print.frame.Segment;

/**
 * An outline as short as it can be written: whole units, each step from where the last one ended.
 *
 * @param x where it begins
 * @param y where it begins
 * @param steps from there
 */
record Path(long x, long y, String steps) {

    /** In units. */
    private static final double NEAR = 0.5;

    /**
     * An outline, left as open as it is.
     *
     * @param perPoint units to a point
     */
    static Path of(List<Segment> outline, double perPoint) {
        Steps steps = new Steps(perPoint);
        List<Segment> segments = Straight.of(outline, NEAR / perPoint);
        Segment.Start start = (Segment.Start) segments.get(0);
        steps.go(start.x(), start.y());
        long x = steps.x;
        long y = steps.y;
        segments.subList(1, segments.size()).forEach(steps::add);
        return new Path(x, y, steps.text.toString());
    }

    Path moved(long dx, long dy) {
        return new Path(x + dx, y + dy, steps);
    }

    /** Back to where it began. */
    Path closed() {
        return new Path(x, y, steps + "z");
    }

    /** As SVG has it. */
    String data() {
        return "M" + x + (y < 0 ? "" : " ") + y + steps;
    }

    private static final class Steps {

        private final double perPoint;
        private final StringBuilder text = new StringBuilder();
        private char command = ' ';
        private long x;
        private long y;

        Steps(double perPoint) {
            this.perPoint = perPoint;
        }

        void add(Segment segment) {
            if (segment instanceof Segment.Start start) {
                command('m');
                step(start.x(), start.y());
                go(start.x(), start.y());
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
            if (next != command || next == 'm') {
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
}
