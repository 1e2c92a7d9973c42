package org.drillwright.print.pose;

import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Target;
import org.drillwright.notation.Width;
import org.drillwright.print.pose.body.Arm;
import org.drillwright.print.pose.body.Axes;
import org.drillwright.print.pose.body.Body;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.Head;
import org.drillwright.print.pose.body.Leg;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.Trunk.Slice;

/** Where on a body the lines lie that a stroke comes in by. Judged by eye, no source. */
final class TargetPoints {

    /** Below the arm, so that the place is on its under side. */
    private static final double UNDER_ARM = 0.045;

    private final Body body;
    private final Camera camera;

    TargetPoints(Body body, Camera camera) {
        this.body = body;
        this.camera = camera;
    }

    /** The place of a line; not of the arm, which is where its arm is. */
    Place of(Line line) {
        return switch (line) {
            case HEAD -> head();
            case INSIDE -> trunk(0.62, -0.11);
            case OUTSIDE -> trunk(0.45, 0.14);
            case ARM -> trunk(0.80, 0.085);
            case HIGH_INSIDE, HIGH_OUTSIDE, LOW_INSIDE, LOW_OUTSIDE ->
                thrust(line.height().orElseThrow(), line.width().orElseThrow());
        };
    }

    /** The place of a part of the body of which no line is told: in the middle; not of the arm, which is where its arm is. */
    Place of(Target target) {
        return switch (target) {
            case HEAD, CHEEK, INSIDE_CHEEK, OUTSIDE_CHEEK -> head();
            case CHEST, SHOULDER -> trunk(0.74, 0);
            case BODY, BACK, FLANK, HAND, WRIST, FOREARM, ELBOW, MARK -> trunk(0.5, 0);
            case BELLY -> trunk(0.25, 0);
            case THIGH, KNEE, LEG -> thigh();
            case FOOT -> foot();
        };
    }

    private Place thrust(Height height, Width width) {
        boolean inside = width == Width.INSIDE;
        double share = height == Height.LOW ? 0.22 : inside ? 0.72 : 0.74;
        return trunk(share, inside ? -0.075 : 0.085);
    }

    /** The front of the mask, over the eyes. */
    private Place head() {
        Head head = body.head(true);
        Point over = head.up().times(0.9).plus(head.looking().times(0.436));
        Point top = head.centre()
                .plus(head.up().times(0.9 * Head.HALF_HEIGHT))
                .plus(head.looking().times(0.436 * Head.HALF_DEPTH));
        return new Place(top, over.unit(), top);
    }

    /** On the under side of the forearm, 45 % of the way from the wrist to the elbow. */
    static Place arm(Arm arm, double share) {
        Point place = arm.wrist().towards(arm.elbow(), share).minus(Point.UP.times(UNDER_ARM));
        return new Place(place, Point.UP.times(-1), place);
    }

    /** On the front of the leg under the sword. */
    private Place thigh() {
        Leg leg = body.front();
        Point normal = body.axes().ahead().squareTo(leg.knee().minus(leg.hip()));
        Point place = leg.hip().towards(leg.knee(), 0.6).plus(normal.times(0.08));
        return new Place(place, normal, place);
    }

    private Place foot() {
        Leg leg = body.front();
        Point place = leg.ankle().towards(leg.toe(), 0.6).plus(Point.UP.times(0.02));
        return new Place(place, Point.UP, place);
    }

    /**
     * On the trunk.
     *
     * @param share along the spine, 0 hips, 1 shoulders
     * @param outside from the spine towards the side of the sword, in metres
     */
    private Place trunk(double share, double outside) {
        Slice slice = body.torso().slice(share);
        Axes axes = body.axes();
        double faced = facing(slice, axes, outside);
        double seen = faced;
        for (int step = 1; step <= 180 && looksAway(slice, seen); step++) {
            double turn = Math.toRadians(step);
            seen = looksAway(slice, faced + turn) ? faced - turn : faced + turn;
        }
        return new Place(point(slice, seen), normal(slice, seen), point(slice, faced));
    }

    /** The angle round the slice where it is so far outside and looks to the partner. */
    private static double facing(Slice slice, Axes axes, double outside) {
        double best = 0;
        double least = Double.MAX_VALUE;
        for (int step = 0; step < 3600; step++) {
            double angle = Math.toRadians(step / 10.0);
            double off = Math.abs(point(slice, angle).minus(slice.middle()).dot(axes.outside()) - outside);
            if (normal(slice, angle).dot(axes.ahead()) > 0 && off < least) {
                least = off;
                best = angle;
            }
        }
        return best;
    }

    private boolean looksAway(Slice slice, double angle) {
        return camera.away().dot(normal(slice, angle)) > 0;
    }

    private static Point point(Slice slice, double angle) {
        return slice.middle()
                .plus(slice.width().times(Math.cos(angle)))
                .plus(slice.depth().times(Math.sin(angle)));
    }

    private static Point normal(Slice slice, double angle) {
        double width = slice.width().length();
        double depth = slice.depth().length();
        return slice.width()
                .times(Math.cos(angle) / (width * width))
                .plus(slice.depth().times(Math.sin(angle) / (depth * depth)))
                .unit();
    }
}
