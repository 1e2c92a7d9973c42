package org.drillwright.print.pose;

import org.drillwright.model.Side;
import org.drillwright.notation.Position;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.Person;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.Silhouette;

/** An edge that is brought to a place: the blade is straight and passes the place near its end. Figures judged by eye. */
final class Cut {

    /** On the blade from the bell on, 1 being its end: what touches a target. */
    private static final double EDGE = 0.86;

    /** From the shoulder to the wrist. */
    private static final double ARM = 0.555;

    private static final double HEAD_RISE = 14;

    private static final double SIDE_RISE = 2;

    /** How a blade lies that passes a place: degrees up and round, and the lean of who holds it. */
    private record Lie(double rise, double round, double lean) {}

    private final double length;
    private final Camera camera;

    Cut(double length, Camera camera) {
        this.length = length;
        this.camera = camera;
    }

    /** With the edge on the target. */
    Person land(Stand stand, Place target, boolean head) {
        return passing(stand, target.seen(), target.normal(), EDGE, head);
    }

    /** With the edge on the parrying blade. */
    Parrying.Carried parried(Stand attacker, Person defender, Position parry, boolean head) {
        boolean quinte = parry == Position.QUINTE;
        Blade guard = defender.blade().orElseThrow();
        Point forte = guard.bell().towards(guard.tip(), (quinte ? 0.34 : 0.22) / length);
        double side = Parrying.pushesInside(parry) ? -1 : 1;
        Point from = quinte ? Point.UP : defender.outside().times(side);
        Point meets = forte.plus(from.times(Parrying.THICKNESS));
        Person person = passing(attacker, meets, from, quinte ? 0.55 : 0.47, head);
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
    private Person passing(Stand stand, Point place, Point normal, double share, boolean head) {
        Lie best = new Lie(0, 0, 0);
        double least = Double.MAX_VALUE;
        for (int lean = -8; lean <= 14; lean += 2) {
            Point shoulder = stand.leaning(lean).body().swordShoulder();
            for (int rise = -30; rise <= 30; rise += 2) {
                for (int round = -24; round <= 24; round += 4) {
                    Lie lie = new Lie((head ? HEAD_RISE : SIDE_RISE) + rise, round, lean);
                    Point along = direction(stand, lie);
                    double off = Math.abs(wrist(place, along, share).distance(shoulder) - ARM);
                    double cost = off / 0.01
                            + Math.abs(rise) / 12.0
                            + Math.abs(round) / 16.0
                            + Math.abs(lean) / 6.0
                            + 4 * Math.abs(along.dot(normal));
                    if (cost < least) {
                        least = cost;
                        best = lie;
                    }
                }
            }
        }
        Stand leaning = stand.leaning(best.lean());
        Point along = direction(stand, best);
        Point wrist = wrist(place, along, share);
        Point reached = leaning.body().swordArm(wrist).wrist();
        double missing = wrist.minus(reached).dot(leaning.body().axes().ahead());
        return leaning.ahead(Math.max(0, missing)).with(wrist, along, length);
    }

    private Point direction(Stand stand, Lie lie) {
        double up = Math.toRadians(lie.rise());
        double round = Math.toRadians(lie.round());
        return stand.body().axes().way(Math.cos(up) * Math.cos(round), Math.cos(up) * Math.sin(round), Math.sin(up));
    }

    private Point wrist(Point place, Point along, double share) {
        return place.minus(along.times(share * length + Arms.GRIP));
    }
}
