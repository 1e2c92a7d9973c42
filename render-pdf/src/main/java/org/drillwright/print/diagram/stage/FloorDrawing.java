package org.drillwright.print.diagram.stage;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.Side;
import org.drillwright.phrase.Range;
import org.drillwright.print.diagram.curve.Dot;
import org.drillwright.print.diagram.figure.Eye;
import org.drillwright.print.diagram.figure.Gauge;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.pose.FootMove;
import org.drillwright.print.pose.Pose;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.Proportions;

/** The floor: a line to stand on, arrows for feet that moved, the measure from front toe to front toe. */
final class FloorDrawing {

    /** Beyond so many foot actions no touch is near, and the bar is not to scale. */
    private static final int OUT = 3;

    private static final double HALF_SHOE = Proportions.FOOT / 2;

    private final Eye eye;
    private final Gauge gauge;
    private final MotionSigns signs;

    FloorDrawing(Eye eye, Gauge gauge) {
        this.eye = eye;
        this.gauge = gauge;
        this.signs = new MotionSigns(gauge);
    }

    /** The line under the feet. */
    Mark ground(double left, double right) {
        double y = level();
        return new Mark.Named("ground", List.of(new Mark.Line(left, y, right, y, signs.thin(), Ink.BLACK)));
    }

    /** Where the line lies, in points below the world's origin. */
    double level() {
        return 0.045 * gauge.scale();
    }

    private double row(int number) {
        return level() + (2.0 + 1.9 * number) * gauge.mark();
    }

    /** Arrows and, if two stand on it, the measure. */
    List<Mark> marks(Pose pose, Range measure) {
        List<Mark> marks = new ArrayList<>();
        for (FootMove move : pose.feet()) {
            marks.add(new Mark.Named("feet of the " + move.by().word(), arrow(move)));
        }
        if (pose instanceof Pose.Pair pair) {
            double from = x(-pair.measure() / 2, pair);
            double to = x(pair.measure() / 2, pair);
            boolean taken = pair.feet().stream().anyMatch(move -> overlaps(move, from, to));
            marks.addAll(measure(measure, from, to, row(taken ? 1 : 0)));
        }
        return marks;
    }

    /** Where a front toe stands on paper; the two stand round the middle between their toes. */
    private double x(double along, Pose.Pair pair) {
        Point leader = pair.leader().front().toe();
        Point follower = pair.follower().front().toe();
        return eye.see(new Point(along + (leader.x() + follower.x()) / 2, 0, 0)).x();
    }

    private double x(double along) {
        return eye.see(new Point(along, 0, 0)).x();
    }

    private boolean overlaps(FootMove move, double from, double to) {
        double low = Math.min(x(move.from()), x(move.to()));
        double high = Math.max(x(move.from()), x(move.to()));
        double near = 0.5 * gauge.mark();
        return move.kind() == FootMove.Kind.STAMP || (high > from + near && low < to - near);
    }

    private List<Mark> arrow(FootMove move) {
        double y = row(0);
        double from = x(move.from());
        double to = x(move.to());
        if (move.kind() == FootMove.Kind.STAMP) {
            double back = move.by() == Side.LEADER ? -HALF_SHOE : HALF_SHOE;
            return signs.stamp(x(move.to() + back), level());
        }
        if (Math.abs(to - from) < 0.1) {
            return List.of();
        }
        return switch (move.kind()) {
            case JUMP -> signs.hop(from, to, y);
            case BOTH_FEET -> signs.foot(from, to, y, 2);
            case CROSSING -> signs.crossing(from, to, y);
            default -> signs.foot(from, to, y, 1);
        };
    }

    private List<Mark> measure(Range measure, double from, double to, double y) {
        boolean whole = (measure.isExact() || measure.most() < 0) && measure.least() < OUT;
        List<Mark> bar = signs.bar(from, to, y, whole);
        List<Mark> marks = new ArrayList<>(List.of(new Mark.Named("measure", bar)));
        Dot middle = new Dot((from + to) / 2, y);
        if (!measure.isKnown()) {
            List<Mark> question = new ArrayList<>();
            question.add(Mark.Shape.filled(Outline.circle(middle.x(), y, 2.2 * gauge.mark()), Ink.WHITE));
            question.addAll(signs.question(middle, 3.6 * gauge.mark(), false));
            marks.add(new Mark.Named("unknown", question));
            return marks;
        }
        int shoes = measure.isOut() ? OUT : Math.max(0, measure.least());
        double apart = 4.0 * gauge.mark();
        for (int at = 0; at < shoes; at++) {
            Dot place = middle.plus(new Dot((at - (shoes - 1) / 2.0) * apart, 0));
            marks.add(new Mark.Named("foot action", signs.shoe(place)));
        }
        return marks;
    }
}
