package org.drillwright.print.pose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Position;
import org.drillwright.print.pose.body.Axes;
import org.drillwright.print.pose.body.Body;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.Hold;
import org.drillwright.print.pose.body.Person;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.Silhouette;

/**
 * A point that a parry carries aside: it passes the forte of the defender's blade and stands free beside the defender, in
 * space and on paper. Where the plain pose hides it, hands and bodies give a little, as little as will do.
 */
final class Parrying {

    /** How far the point is to be from what the defender covers on paper, in metres. */
    static final double CLEAR = 0.12;

    /** On the defender's blade from the bell on, in metres. */
    static final double FORTE = 0.24;

    /** Between the middles of two blades that touch. */
    static final double THICKNESS = 0.012;

    /** How much of the way from the target to the crossing the attacker's hand goes with the parry. */
    private static final double CARRIED = 0.35;

    /** How it ends. */
    record Carried(Person attacker, Person defender, Crossing crossing, double clear) {}

    /** What gives, the least first: metres, shares, degrees. */
    private record Change(double hand, double raised, double wider, double lean, double arm) {
        double cost() {
            return Math.abs(hand) / 0.04
                    + raised / 0.03
                    + (wider - 1) / 0.08
                    + Math.abs(lean) / 2
                    + (Thrust.STRETCHED - arm) / 0.013;
        }
    }

    private final Weapon weapon;
    private final Position parry;
    private final Place target;
    private final Camera camera;

    Parrying(Weapon weapon, Position parry, Place target, Camera camera) {
        this.weapon = weapon;
        this.parry = parry;
        this.target = target;
        this.camera = camera;
    }

    Carried carry(Stand attacker, Stand defender) {
        Carried best = carried(attacker, defender, new Change(0, 0, 1, 0, Thrust.STRETCHED));
        for (Change change : changes()) {
            if (best.clear() >= CLEAR) {
                return best;
            }
            Carried next = carried(attacker, defender, change);
            if (next.clear() > best.clear()) {
                best = next;
            }
        }
        return best;
    }

    private List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        for (double hand : hands()) {
            for (double raised : new double[] {0, 0.06, 0.12}) {
                for (double wider : new double[] {1, 1.2, 1.3}) {
                    for (double lean : new double[] {0, -3, -6}) {
                        for (double arm : new double[] {Thrust.STRETCHED, 0.55, 0.53}) {
                            changes.add(new Change(hand, raised, wider, lean, arm));
                        }
                    }
                }
            }
        }
        changes.sort(Comparator.comparingDouble(Change::cost));
        return changes;
    }

    private double[] hands() {
        return low()
                ? new double[] {0, 0.04, -0.04, 0.08, -0.08, 0.12, -0.12, 0.18, -0.18}
                : new double[] {0, -0.04, -0.08, -0.12, -0.18};
    }

    /** Whether the parry takes the point down. */
    private boolean low() {
        return Holds.parry(weapon, parry).up() < 0;
    }

    private Carried carried(Stand attacker, Stand defender, Change change) {
        Hold hold = Holds.parry(weapon, parry);
        Point wrist = hold.wrist();
        Hold wide = new Hold(
                new Point(wrist.x(), wrist.y() * change.wider(), wrist.z() + change.raised()), hold.up(), hold.out());
        Person parrying = defender.holding(wide, Arms.blade(weapon));
        Axes axes = defender.body().axes();
        Point bell = parrying.blade().orElseThrow().bell();
        Point tip = parrying.blade().orElseThrow().tip();
        Point forte = bell.towards(tip, FORTE / Arms.blade(weapon));
        double side = pushesInside(parry) ? -1 : 1;
        Point passes = forte.plus(axes.outside().times(side * THICKNESS));
        Person carried = attack(attacker, passes, forte, change);
        double clear = Silhouette.of(parrying, camera)
                .distance(carried.blade().orElseThrow().tip());
        Side nearer = camera.depth(passes) < camera.depth(forte) ? attacker.side() : defender.side();
        return new Carried(carried, parrying, new Crossing(passes.towards(forte, 0.5), nearer), clear);
    }

    private Person attack(Stand attacker, Point passes, Point forte, Change change) {
        Stand stand = attacker.leaning(change.lean());
        Body body = stand.body();
        Point shoulder = body.swordShoulder();
        Point aim = target.seen().towards(forte, CARRIED).plus(Point.UP.times(change.hand()));
        Point wrist = shoulder.towards(aim, change.arm() / shoulder.distance(aim));
        return stand.with(wrist, passes.minus(wrist).unit(), Arms.blade(weapon));
    }

    /** Whether a parry carries a point to the inside of its owner. */
    static boolean pushesInside(Position parry) {
        return switch (parry) {
            case QUARTE, SEPTIME, PRIME, QUINTE -> true;
            case SIXTE, OCTAVE, TIERCE, SECONDE -> false;
        };
    }
}
