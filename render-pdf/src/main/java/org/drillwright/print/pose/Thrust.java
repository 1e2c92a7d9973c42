package org.drillwright.print.pose;

import java.util.Optional;
import org.drillwright.model.Weapon;
import org.drillwright.print.pose.body.Arm;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Body;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;
import org.drillwright.print.pose.body.Posture;

/** A point that is sent to a place: how far to lean, where the hand is, how the blade bends. */
final class Thrust {

    /** From the shoulder to the wrist of a stretched arm: 165° at the elbow. */
    static final double STRETCHED = 0.576;

    /** The hand is held so much over the line to the target, in metres. */
    private static final double OVER = 0.05;

    /** From the bell to the target: the shorter, the more the blade bends. An épée is stiffer. */
    private static final double CHORD = 0.845;

    private static final double EPEE_CHORD = 0.872;

    /** Nearer than this to the chord nothing more is done, in metres. */
    private static final double CLOSE_ENOUGH = 0.008;

    /** The longest chord, as a share of the blade, in which the eye still sees that it bends. */
    private static final double FLATTEST = 0.985;

    /** How far the weight goes forward at a time, and at most, in metres. */
    private static final double FORWARD = 0.03;

    private static final double MOST_FORWARD = 0.18;

    private static final int LEAST_LEAN = -8;

    private static final int MOST_LEAN = 14;

    private final Weapon weapon;
    private final Point target;
    private final double raised;

    /**
     * @param raised how much higher than usual the hand is, in metres
     */
    Thrust(Weapon weapon, Point target, double raised) {
        this.weapon = weapon;
        this.target = target;
        this.raised = raised;
    }

    private double chord() {
        return weapon == Weapon.EPEE ? EPEE_CHORD : CHORD;
    }

    /**
     * With the point on the target and the blade bent. The body leans; where that is not enough, on guard the weight goes
     * to the front foot as well, and at last the whole person stands nearer.
     */
    PosedBody land(Stand stand) {
        Stand best = lean(stand);
        for (double forward = FORWARD;
                forward <= MOST_FORWARD && chord(best) > chord() + CLOSE_ENOUGH;
                forward += FORWARD) {
            best = stand.posture().equals(Posture.ON_GUARD) ? lean(stand.forward(forward)) : best;
        }
        double chord = chord(best);
        if (chord > FLATTEST * Arms.blade(weapon)) {
            return landed(best.ahead(chord - chord()), STRETCHED);
        }
        double reach = STRETCHED;
        while (reach > 0.25 && bell(best, reach).distance(target) < chord() - 0.03) {
            reach -= 0.004;
        }
        return landed(best, reach);
    }

    private Stand lean(Stand stand) {
        Stand best = stand;
        for (int lean = LEAST_LEAN; lean <= MOST_LEAN; lean++) {
            Stand next = stand.leaning(lean);
            if (off(next) < off(best) - 1e-9) {
                best = next;
            }
        }
        return best;
    }

    private double off(Stand stand) {
        return Math.abs(chord(stand) - chord());
    }

    private double chord(Stand stand) {
        return bell(stand, STRETCHED).distance(target);
    }

    private PosedBody landed(Stand stand, double reach) {
        Body body = stand.body();
        Arm arm = body.swordArm(wrist(body, reach));
        Blade blade = Blade.bent(bell(stand, reach), target, Arms.blade(weapon));
        return stand.with(Optional.of(arm), Optional.of(blade));
    }

    /** With a straight arm and blade, the point on the way to the target. */
    PosedBody threaten(Stand stand) {
        Body body = stand.body();
        Point wrist = wrist(body, STRETCHED);
        return stand.with(wrist, target.minus(wrist).unit(), Arms.blade(weapon));
    }

    private Point bell(Stand stand, double reach) {
        Point wrist = wrist(stand.body(), reach);
        return wrist.towards(target, Arms.GRIP / wrist.distance(target));
    }

    private Point wrist(Body body, double reach) {
        Point shoulder = body.swordShoulder();
        Point aim = target.plus(Point.UP.times(OVER + raised));
        return shoulder.towards(aim, reach / shoulder.distance(aim));
    }
}
