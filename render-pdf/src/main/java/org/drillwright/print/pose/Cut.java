package org.drillwright.print.pose;

import org.drillwright.model.Side;
import org.drillwright.notation.Position;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;
import org.drillwright.print.pose.body.Posture;
import org.drillwright.print.pose.body.Silhouette;

/** An edge that is brought to a place: the blade is straight and passes the place near its end. Figures judged by eye. */
final class Cut {

    /** On the blade from the bell on, 1 being its end: what touches a target. */
    private static final double EDGE = 0.90;

    /** From the shoulder to the wrist. */
    private static final double ARM = 0.57;

    private static final double HEAD_RISE = 14;

    private static final double SIDE_RISE = 2;

    private static final int LEAST_LEAN = -12;

    private static final int MOST_LEAN = 22;

    /** The weight goes forward by so much at a time, in metres, and at most so often. */
    private static final double FORWARD = 0.03;

    private static final int MOST_FORWARD = 6;

    private static final double CLOSE_ENOUGH = 0.015;

    /** How a blade lies that passes a place: degrees up and round, and of lean. */
    private record Lie(double rise, double round, double lean) {}

    private final double length;
    private final Camera camera;

    Cut(double length, Camera camera) {
        this.length = length;
        this.camera = camera;
    }

    /** With the edge on the target. */
    PosedBody land(Stand stand, Place target, boolean head) {
        return passing(stand, target.seen(), target.normal(), EDGE, head);
    }

    /** With the edge on the parrying blade. */
    Parrying.Carried parried(Stand attacker, PosedBody defender, Position parry, boolean head) {
        boolean quinte = parry == Position.QUINTE;
        Blade guard = defender.blade().orElseThrow();
        Point forte = guard.bell().towards(guard.tip(), (quinte ? 0.34 : 0.22) / length);
        double side = Parrying.pushesInside(parry) ? -1 : 1;
        Point from = quinte ? Point.UP : defender.outside().times(side);
        Point meets = forte.plus(from.times(Parrying.THICKNESS));
        PosedBody person = passing(attacker, meets, from, quinte ? 0.55 : 0.47, head);
        double clear = Silhouette.of(defender, camera)
                .distance(person.blade().orElseThrow().tip());
        Side nearer = camera.depth(meets) < camera.depth(forte) ? attacker.side() : defender.side();
        return new Parrying.Carried(person, defender, new Crossing(meets.towards(forte, 0.5), nearer), clear);
    }

    /**
     * With the blade through a place.
     *
     * @param normal out of what it touches there
     * @param share where on the blade the place is, 0 bell, 1 end
     */
    private PosedBody passing(Stand stand, Point place, Point normal, double share, boolean head) {
        double base = head ? HEAD_RISE : SIDE_RISE;
        Lie best = lie(stand, place, normal, share, base);
        Stand forward = stand;
        for (int step = 1; step <= MOST_FORWARD && off(forward, best, place, share) > CLOSE_ENOUGH; step++) {
            forward = stand.posture().equals(Posture.ON_GUARD) ? stand.forward(step * FORWARD) : stand;
            best = lie(forward, place, normal, share, base);
        }
        Stand leaning = forward.leaning(best.lean());
        Point along = direction(stand, best.rise(), best.round());
        Point wrist = wrist(place, along, share);
        Point reached = leaning.body().swordArm(wrist).wrist();
        double missing = wrist.minus(reached).dot(leaning.body().axes().ahead());
        return leaning.ahead(Math.max(0, missing)).with(wrist, along, length);
    }

    private Lie lie(Stand stand, Point place, Point normal, double share, double base) {
        Lie best = new Lie(base, 0, 0);
        double least = Double.MAX_VALUE;
        for (int lean = LEAST_LEAN; lean <= MOST_LEAN; lean += 2) {
            Point shoulder = stand.leaning(lean).body().swordShoulder();
            for (int rise = -30; rise <= 30; rise += 2) {
                for (int round = -24; round <= 24; round += 4) {
                    Point along = direction(stand, base + rise, round);
                    double off = Math.abs(wrist(place, along, share).distance(shoulder) - ARM);
                    double cost = off / 0.01
                            + Math.abs(rise) / 12.0
                            + Math.abs(round) / 16.0
                            + Math.abs(lean) / 6.0
                            + 4 * Math.abs(along.dot(normal));
                    if (cost < least) {
                        least = cost;
                        best = new Lie(base + rise, round, lean);
                    }
                }
            }
        }
        return best;
    }

    /** How far the arm is from the length that it should have. */
    private double off(Stand stand, Lie lie, Point place, double share) {
        Point wrist = wrist(place, direction(stand, lie.rise(), lie.round()), share);
        return Math.abs(wrist.distance(stand.leaning(lie.lean()).body().swordShoulder()) - ARM);
    }

    private static Point direction(Stand stand, double rise, double round) {
        double up = Math.toRadians(rise);
        double aside = Math.toRadians(round);
        return stand.axes().way(Math.cos(up) * Math.cos(aside), Math.cos(up) * Math.sin(aside), Math.sin(up));
    }

    private Point wrist(Point place, Point along, double share) {
        return place.minus(along.times(share * length + Arms.GRIP));
    }
}
