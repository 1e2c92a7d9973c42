package org.drillwright.print.diagram.stage;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.diagram.curve.Dot;
import org.drillwright.print.diagram.figure.Gauge;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Outline;

/** A sign by itself, for the legend. */
public enum LegendSign {
    /** A black disc and a white one. */
    PEOPLE {
        @Override
        List<Mark> draw(MotionSigns signs, double r) {
            return List.of(
                    Mark.Shape.filled(Outline.circle(-2 * r, 0, 1.6 * r), Ink.BLACK),
                    Mark.Shape.stroked(Outline.circle(2 * r, 0, 1.4 * r), 0.4 * r, Ink.BLACK));
        }
    },
    STAR {
        @Override
        List<Mark> draw(MotionSigns signs, double r) {
            return signs.star(ORIGIN, false);
        }
    },
    TICKS {
        @Override
        List<Mark> draw(MotionSigns signs, double r) {
            List<Mark> marks = new ArrayList<>(List.of(
                    new Mark.Line(-4 * r, 1.6 * r, 4 * r, -1.6 * r, signs.thin(), Ink.BLACK),
                    new Mark.Line(-4 * r, -1.6 * r, 4 * r, 1.6 * r, signs.thin(), Ink.BLACK)));
            marks.addAll(signs.ticks(ORIGIN, 3));
            return marks;
        }
    },
    RING {
        @Override
        List<Mark> draw(MotionSigns signs, double r) {
            return signs.ring(ORIGIN);
        }
    },
    DOT {
        @Override
        List<Mark> draw(MotionSigns signs, double r) {
            List<Mark> marks = new ArrayList<>(signs.arrow(List.of(ORIGIN, new Dot(6 * r, 0))));
            marks.addAll(signs.dot(ORIGIN));
            return marks;
        }
    },
    HATCH {
        @Override
        List<Mark> draw(MotionSigns signs, double r) {
            return signs.hatched(5.2 * r);
        }
    },
    /** One foot, both feet, a jump. */
    FEET {
        @Override
        List<Mark> draw(MotionSigns signs, double r) {
            return signs.feet();
        }
    },
    SHOE {
        @Override
        List<Mark> draw(MotionSigns signs, double r) {
            return signs.bar();
        }
    },
    UNKNOWN {
        @Override
        List<Mark> draw(MotionSigns signs, double r) {
            return signs.question(ORIGIN, 4.5 * r, false);
        }
    };

    private static final Dot ORIGIN = new Dot(0, 0);

    abstract List<Mark> draw(MotionSigns signs, double r);

    /** As it is drawn in pictures of a gauge, round the origin. */
    public List<Mark> draw(Gauge gauge) {
        return draw(new MotionSigns(gauge), gauge.mark());
    }
}
