package org.drillwright.print.pose;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Position;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Camera;
import org.drillwright.print.pose.body.Hold;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;
import org.drillwright.print.pose.body.Silhouette;

/**
 * A point that a parry carries aside: it passes the forte of the defender's blade and stands free beside the defender, in
 * space and on paper. Where the plain pose hides it, hands and bodies give a little, as little as will do. The defender's
 * body gives too: without that, prime, and tierce or octave between some hands, left the point within 0.1 m of the body on
 * paper, and the attacker's elbow had to bend to 131°.
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

    /** What it costs if the point goes down from a high parry, which lifts it, in metres of clearance. */
    private static final double ASTRAY = 0.2;

    /** How it ends. */
    record Carried(PosedBody attacker, PosedBody defender, Crossing crossing, double clear) {}

    /** What gives: metres, shares, degrees; the body of the defender goes back. */
    private record Change(double hand, double raised, double wider, double lean, double arm, double back) {
        double cost() {
            return Math.abs(hand) / 0.04
                    + raised / 0.03
                    + (wider - 1) / 0.08
                    + Math.abs(lean) / 2
                    + (Thrust.STRETCHED - arm) / 0.013
                    + Math.abs(back) / 1.5;
        }
    }

    /** A defender in the parry, where the forte is, and what is covered. */
    private record Guard(PosedBody person, Point forte, Silhouette covered) {}

    /** The least first; for a low parry the hand may also go up. */
    private static final Map<Boolean, List<Change>> CHANGES = Map.of(
            false, changes(0, -0.04, -0.08, -0.12, -0.18, -0.24, -0.30, -0.36),
            true, changes(0, 0.04, -0.04, 0.08, -0.08, 0.12, -0.12, 0.18, -0.18, 0.24, -0.24));

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
        Map<List<Double>, Guard> guards = new HashMap<>();
        Map<Double, Stand> stands = new HashMap<>();
        Change best = new Change(0, 0, 1, 0, Thrust.STRETCHED, 0);
        double most = -Double.MAX_VALUE;
        for (Change change : CHANGES.getOrDefault(low(), List.of())) {
            Guard guard = guards.computeIfAbsent(
                    List.of(change.raised(), change.wider(), change.back()), key -> guard(defender, change));
            Stand stand = stands.computeIfAbsent(change.lean(), attacker::leaning);
            double clear = clear(stand, guard, change);
            if (clear > most) {
                most = clear;
                best = change;
            }
            if (most >= CLEAR) {
                break;
            }
        }
        return carried(attacker.leaning(best.lean()), guard(defender, best), best, most);
    }

    private static List<Change> changes(double... hands) {
        List<Change> changes = new ArrayList<>();
        for (double hand : hands) {
            for (double raised : new double[] {0, 0.06, 0.12, 0.18}) {
                for (double wider : new double[] {1, 1.2, 1.3, 1.5}) {
                    for (double lean : new double[] {0, -3, -6}) {
                        for (double arm : new double[] {Thrust.STRETCHED, 0.55, 0.53}) {
                            for (double back : new double[] {0, -4, -8, -12}) {
                                changes.add(new Change(hand, raised, wider, lean, arm, back));
                            }
                        }
                    }
                }
            }
        }
        changes.sort(Comparator.comparingDouble(Change::cost));
        return changes;
    }

    /** Whether the parry takes the point down. */
    private boolean low() {
        return Holds.parry(weapon, parry).up() < 0;
    }

    private Guard guard(Stand defender, Change change) {
        Hold hold = Holds.parry(weapon, parry);
        Point wrist = hold.wrist();
        Hold wide = new Hold(
                new Point(wrist.x(), wrist.y() * change.wider(), wrist.z() + change.raised()), hold.up(), hold.out());
        PosedBody person = defender.leaning(change.back()).holding(wide, Arms.blade(weapon));
        Blade blade = person.blade().orElseThrow();
        Point forte = blade.bell().towards(blade.tip(), FORTE / Arms.blade(weapon));
        return new Guard(person, forte, Silhouette.of(person, camera));
    }

    /** Where the attacker's blade passes: beside the forte, on the side to which it pushes. */
    private Point passes(Guard guard, Point wrist) {
        Blade blade = guard.person().blade().orElseThrow();
        Point across = blade.tip()
                .minus(blade.bell())
                .cross(guard.forte().minus(wrist))
                .unit();
        Point pushed = guard.person().outside().times(pushesInside(parry) ? -1 : 1);
        return guard.forte().plus(across.times(across.dot(pushed) < 0 ? -THICKNESS : THICKNESS));
    }

    private double clear(Stand attacker, Guard guard, Change change) {
        Point wrist = wrist(attacker, guard, change);
        Point along = passes(guard, wrist).minus(wrist).unit();
        Point tip = wrist.plus(along.times(Arms.GRIP + Arms.blade(weapon)));
        boolean astray = !low() && tip.z() < guard.forte().z();
        return guard.covered().distance(tip) - (astray ? ASTRAY : 0);
    }

    private Point wrist(Stand attacker, Guard guard, Change change) {
        Point shoulder = attacker.body().swordShoulder();
        Point aim = target.seen().towards(guard.forte(), CARRIED).plus(Point.UP.times(change.hand()));
        return shoulder.towards(aim, change.arm() / shoulder.distance(aim));
    }

    private Carried carried(Stand attacker, Guard guard, Change change, double clear) {
        Point wrist = wrist(attacker, guard, change);
        Point passes = passes(guard, wrist);
        PosedBody carried = attacker.with(wrist, passes.minus(wrist).unit(), Arms.blade(weapon));
        boolean nearer = camera.depth(passes) < camera.depth(guard.forte());
        Crossing crossing = new Crossing(
                passes.towards(guard.forte(), 0.5),
                nearer ? attacker.side() : guard.person().side());
        return new Carried(carried, guard.person(), crossing, clear);
    }

    /** Whether a parry carries a point to the inside of its owner. */
    static boolean pushesInside(Position parry) {
        return switch (parry) {
            case QUARTE, SEPTIME, PRIME, QUINTE -> true;
            case SIXTE, OCTAVE, TIERCE, SECONDE -> false;
        };
    }
}
