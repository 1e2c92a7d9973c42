package org.drillwright.print.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.drillwright.notation.Line;
import org.drillwright.notation.Width;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;

/** The ways of points and edges, as curves in space. Their sizes were judged by eye on drawn sheets, no source. */
final class Trajectories {

    private static final int PARTS = 24;

    /** How far from the bell a way crosses to the other side. */
    private static final double ASIDE = 0.15;

    private Trajectories() {}

    /**
     * How a stroke got to where it goes.
     *
     * @param guard the blade of the one attacked, where the stroke went round it
     */
    static List<Trajectory> of(
            Stroke stroke, PosedBody attacker, PosedBody defender, Blade guard, boolean parriedRound) {
        List<Trajectory> ways = new ArrayList<>();
        Optional<Line> line = stroke.threat().line().value();
        if (line.isPresent()) {
            stroke(stroke, attacker, defender, guard, line.get()).ifPresent(ways::add);
            if (parriedRound && attacker.blade().isPresent()) {
                ways.add(round(defender, attacker, attacker.blade().get(), line.get()));
            }
        }
        return ways;
    }

    private static Optional<Trajectory> stroke(
            Stroke stroke, PosedBody attacker, PosedBody defender, Blade guard, Line line) {
        if (stroke.cut() && attacker.blade().isPresent()) {
            return Optional.of(cut(attacker));
        }
        return switch (stroke.path()) {
            case DISENGAGE, ONE_TWO -> Optional.of(under(attacker, defender, guard, line));
            case CUT_OVER -> Optional.of(over(attacker, defender, guard, line));
            case COUNTER_DISENGAGE, DOUBLE -> Optional.of(round(attacker, defender, guard, line));
            case DIRECT, GLIDE, DECEIVE, UNSTATED -> Optional.empty();
        };
    }

    /** To which side of its owner a line lies: 1 outside, −1 inside. */
    private static double side(Line line) {
        return line.width().filter(Width.OUTSIDE::equals).isPresent() ? 1 : -1;
    }

    /** Under the bell of the other, from one side of it to the other. */
    private static Trajectory under(PosedBody by, PosedBody other, Blade guard, Line line) {
        Point middle = guard.bell().plus(other.ahead().times(0.12));
        return new Trajectory(by.side(), Trajectory.Kind.DISENGAGE, curve(share -> {
            double angle = Math.PI * share;
            return middle.plus(other.ahead().times(0.22 * Math.cos(angle)))
                    .plus(other.outside().times(side(line) * ASIDE * (2 * share - 1)))
                    .minus(Point.UP.times(0.33 * Math.sin(angle)));
        }));
    }

    /** Over the point of the other. */
    private static Trajectory over(PosedBody by, PosedBody other, Blade guard, Line line) {
        Point top = guard.tip().z() > guard.bell().z() ? guard.tip() : guard.bell();
        Point middle = top.minus(Point.UP.times(0.08));
        return new Trajectory(by.side(), Trajectory.Kind.CUT_OVER, curve(share -> {
            double angle = Math.PI * (1.15 * share - 0.1);
            return middle.plus(other.ahead().times(0.20 * Math.cos(angle)))
                    .plus(other.outside().times(side(line) * ASIDE * (2 * share - 1)))
                    .plus(Point.UP.times(0.20 * Math.sin(angle)));
        }));
    }

    /** All round the blade of the other, as who looks along it sees it: from the line on, under it, and back over it. */
    private static Trajectory round(PosedBody by, PosedBody other, Blade guard, Line line) {
        Point middle = guard.bell().towards(guard.tip(), 0.35);
        return new Trajectory(by.side(), Trajectory.Kind.CIRCULAR, curve(share -> {
            double angle = 2 * Math.PI * (0.86 * share + 0.07);
            return middle.plus(by.outside().times(side(line) * 0.17 * Math.cos(angle)))
                    .minus(Point.UP.times(0.17 * Math.sin(angle)))
                    .plus(other.ahead().times(0.24 * (0.5 - share)));
        }));
    }

    /** Down with the edge, in the plane of arm and blade. */
    private static Trajectory cut(PosedBody by) {
        Blade blade = by.blade().orElseThrow();
        Point along = blade.tip().minus(blade.bell()).unit();
        Point up = Point.UP.squareTo(along);
        return new Trajectory(by.side(), Trajectory.Kind.CUT, curve(share -> {
            double angle = Math.toRadians(50 - 46 * share);
            return blade.bell().plus(along.times(0.80 * Math.cos(angle))).plus(up.times(0.80 * Math.sin(angle)));
        }));
    }

    private static List<Point> curve(DoubleFunction<Point> at) {
        List<Point> points = new ArrayList<>();
        for (int part = 0; part <= PARTS; part++) {
            points.add(at.apply((double) part / PARTS));
        }
        return points;
    }
}
