package org.drillwright.print.pose.body;

import static org.drillwright.print.pose.body.Proportions.ANKLE;
import static org.drillwright.print.pose.body.Proportions.FOOT;
import static org.drillwright.print.pose.body.Proportions.FOREARM;
import static org.drillwright.print.pose.body.Proportions.HEEL;
import static org.drillwright.print.pose.body.Proportions.SHANK;
import static org.drillwright.print.pose.body.Proportions.THIGH;
import static org.drillwright.print.pose.body.Proportions.TRUNK;
import static org.drillwright.print.pose.body.Proportions.UPPER_ARM;

import java.util.Optional;

/**
 * A person on the way from one posture to another. Hips, hands and feet go straight, the trunk and the blade turn, and
 * the joints follow so that no bone changes its length. It is a way to see what moves, not how a body is moved.
 */
public final class Going {

    /**
     * Of the way of the feet, what the hand is ahead of them: "by extending the arm ... preceding the launching of the
     * lunge" (FIE Technical Rules, definition of the attack, from memory). How far ahead is judged by eye.
     */
    private static final double HAND_FIRST = 0.4;

    /** Feet that go less far stand, in metres. */
    private static final double STANDING = 0.05;

    private final PosedBody from;
    private final PosedBody to;
    private final double share;
    private final double hand;

    private Going(PosedBody from, PosedBody to, double share) {
        this.from = from;
        this.to = to;
        this.share = share;
        this.hand = hand();
    }

    /** Forward the hand is before the feet, and back the feet are before the hand. */
    private double hand() {
        double gain = to.front().toe().minus(from.front().toe()).dot(to.ahead());
        if (gain > STANDING && straightens()) {
            return Math.min(1, share / (1 - HAND_FIRST));
        }
        return gain < -STANDING && !straightens() ? Math.max(0, (share - HAND_FIRST) / (1 - HAND_FIRST)) : share;
    }

    private boolean straightens() {
        return to.swordArm().map(Arm::elbowAngle).orElse(0.0)
                > from.swordArm().map(Arm::elbowAngle).orElse(0.0);
    }

    /**
     * The person on the way; none if they are two, or if it is not known how one of them stands.
     *
     * @param share of the way, 0 to 1
     */
    public static Optional<PosedBody> between(PosedBody from, PosedBody to, double share) {
        boolean one = from.side() == to.side() && from.leftHanded() == to.leftHanded();
        return one && from.feetKnown() && to.feetKnown()
                ? Optional.of(new Going(from, to, share).person())
                : Optional.empty();
    }

    private PosedBody person() {
        Trunk trunk = trunk();
        Optional<Arm> arm =
                from.swordArm().flatMap(old -> to.swordArm().map(next -> arm(trunk.shoulder(1), old, next, hand)));
        Optional<Blade> blade = arm.flatMap(held ->
                from.blade().flatMap(old -> to.blade().map(next -> blade(held.wrist(), old, next))));
        return new PosedBody(
                from.side(),
                from.leftHanded(),
                from.ahead(),
                from.outside(),
                trunk,
                head(trunk),
                leg(trunk.hip(1), from.front(), to.front()),
                leg(trunk.hip(-1), from.rear(), to.rear()),
                arm,
                arm(trunk.shoulder(-1), from.rearArm(), to.rearArm(), share),
                blade,
                share < 0.5 ? from.maskInHand() : to.maskInHand(),
                true);
    }

    private Trunk trunk() {
        Trunk old = from.trunk();
        Trunk next = to.trunk();
        Point up = turned(old.up(), next.up());
        Point pelvis = old.pelvis().towards(next.pelvis(), share);
        Point hips = turned(old.hipLine(), next.hipLine()).squareTo(up);
        Point shoulders = turned(old.shoulderLine(), next.shoulderLine()).squareTo(up);
        Point front = turned(old.hipFront(), next.hipFront()).squareTo(up).squareTo(hips);
        return new Trunk(pelvis, pelvis.plus(up.times(TRUNK)), hips, shoulders, front);
    }

    private Head head(Trunk trunk) {
        Head old = from.head();
        Head next = to.head();
        Point neck = old.centre()
                .minus(from.trunk().shoulders())
                .towards(next.centre().minus(to.trunk().shoulders()), share);
        Point looking = turned(old.looking(), next.looking());
        return new Head(
                trunk.shoulders().plus(neck),
                looking,
                turned(old.up(), next.up()).squareTo(looking),
                share < 0.5 ? old.masked() : next.masked());
    }

    private Leg leg(Point hip, Leg old, Leg next) {
        Point heel = old.heel().towards(next.heel(), share);
        Point toes = turned(old.toe().minus(old.heel()), next.toe().minus(next.heel()));
        Point ankle = heel.plus(toes.times(HEEL)).plus(Point.UP.times(ANKLE));
        Point pole = pole(bend(old.hip(), old.knee(), old.ankle()), bend(next.hip(), next.knee(), next.ankle()), share);
        return new Leg(hip, Limb.joint(hip, ankle, THIGH, SHANK, pole), ankle, heel, heel.plus(toes.times(FOOT)));
    }

    private Arm arm(Point shoulder, Arm old, Arm next, double gone) {
        Point out = old.wrist().minus(old.shoulder()).towards(next.wrist().minus(next.shoulder()), gone);
        Point wrist = Limb.reach(shoulder, shoulder.plus(out), UPPER_ARM, FOREARM);
        Point pole = pole(
                bend(old.shoulder(), old.elbow(), old.wrist()),
                bend(next.shoulder(), next.elbow(), next.wrist()),
                gone);
        return new Arm(shoulder, Limb.joint(shoulder, wrist, UPPER_ARM, FOREARM, pole), wrist);
    }

    /** Where a limb's joint bends to; nothing of a limb that is straight. */
    private static Optional<Point> bend(Point root, Point joint, Point end) {
        Point axis = end.minus(root).unit();
        Point out = joint.minus(root);
        Point off = out.minus(axis.times(axis.dot(out)));
        return off.length() < 1e-6 ? Optional.empty() : Optional.of(off.unit());
    }

    private Point pole(Optional<Point> old, Optional<Point> next, double gone) {
        Point first = old.or(() -> next).orElse(to.ahead());
        return turned(first, next.orElse(first), gone);
    }

    /** The bell keeps its distance from the wrist, and the blade its length. */
    private Blade blade(Point wrist, Blade old, Blade next) {
        Point grip = old.bell().minus(from.swordArm().orElseThrow().wrist());
        Point nextGrip = next.bell().minus(to.swordArm().orElseThrow().wrist());
        double reach = grip.length() + (nextGrip.length() - grip.length()) * hand;
        Point bell = wrist.plus(turned(grip, nextGrip, hand).times(reach));
        Point along = turned(old.tip().minus(old.bell()), next.tip().minus(next.bell()), hand);
        Point bow = bow(old.bell(), old.handle(), old.tip(), 1.0 / 3)
                .towards(bow(next.bell(), next.handle(), next.tip(), 1.0 / 3), hand);
        Point otherBow = bow(old.bell(), old.otherHandle(), old.tip(), 2.0 / 3)
                .towards(bow(next.bell(), next.otherHandle(), next.tip(), 2.0 / 3), hand);
        double length = old.length() + (next.length() - old.length()) * hand;
        double chord = length;
        for (int step = 0; step < 4; step++) {
            chord += length - bent(bell, along, chord, bow, otherBow).length();
        }
        return bent(bell, along, chord, bow, otherBow);
    }

    private static Point bow(Point bell, Point handle, Point tip, double at) {
        return handle.minus(bell.towards(tip, at));
    }

    private static Blade bent(Point bell, Point along, double chord, Point bow, Point otherBow) {
        Point tip = bell.plus(along.times(chord));
        return new Blade(
                bell,
                bell.towards(tip, 1.0 / 3).plus(bow),
                bell.towards(tip, 2.0 / 3).plus(otherBow),
                tip);
    }

    /** A direction on the way from one to another, one metre long. */
    private Point turned(Point old, Point next) {
        return turned(old, next, share);
    }

    private static Point turned(Point old, Point next, double share) {
        Point first = old.unit();
        Point last = next.unit();
        double angle = Math.acos(Math.max(-1, Math.min(1, first.dot(last))));
        if (angle < 1e-6) {
            return last;
        }
        Point side = angle > Math.PI - 1e-6 ? anyAcross(first) : last.squareTo(first);
        return first.times(Math.cos(share * angle)).plus(side.times(Math.sin(share * angle)));
    }

    private static Point anyAcross(Point way) {
        return (Math.abs(way.z()) < 0.9 ? Point.UP : new Point(1, 0, 0)).squareTo(way);
    }
}
