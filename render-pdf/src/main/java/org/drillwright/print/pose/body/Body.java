package org.drillwright.print.pose.body;

import static org.drillwright.print.pose.body.Proportions.ANKLE;
import static org.drillwright.print.pose.body.Proportions.FOOT;
import static org.drillwright.print.pose.body.Proportions.FOREARM;
import static org.drillwright.print.pose.body.Proportions.HEEL;
import static org.drillwright.print.pose.body.Proportions.SHANK;
import static org.drillwright.print.pose.body.Proportions.THIGH;
import static org.drillwright.print.pose.body.Proportions.TRUNK;
import static org.drillwright.print.pose.body.Proportions.UPPER_ARM;

/** A body without its sword arm, as a posture has it. */
public final class Body {

    private static final Point FRONT_KNEE = new Point(1, 0.12, 0.1);
    private static final Point SWORD_ELBOW = new Point(-0.2, 0.35, -1);

    private final Axes axes;
    private final Posture posture;
    private final Trunk trunk;

    public Body(Axes axes, Posture posture) {
        this.axes = axes;
        this.posture = posture;
        this.trunk = trunk();
    }

    public Axes axes() {
        return axes;
    }

    public Posture posture() {
        return posture;
    }

    private Point way(Point parts) {
        return axes.way(parts.x(), parts.y(), parts.z());
    }

    private Point at(Point parts) {
        return axes.toe().plus(way(parts));
    }

    private Trunk trunk() {
        double lean = Math.toRadians(posture.lean());
        Point up = axes.way(Math.sin(lean), 0, Math.cos(lean));
        Point pelvis = at(posture.pelvis());
        Point hips = line(posture.hipTurn(), up);
        return new Trunk(
                pelvis, pelvis.plus(up.times(TRUNK)), hips, line(posture.shoulderTurn(), up), axes.front(hips, up));
    }

    private Point line(double turn, Point up) {
        double angle = Math.toRadians(turn);
        return axes.way(Math.sin(angle), Math.cos(angle), 0).squareTo(up);
    }

    /** From the hips to the shoulders. */
    public Trunk torso() {
        return trunk;
    }

    public Point swordShoulder() {
        return trunk.shoulder(1);
    }

    private Point rearShoulder() {
        return trunk.shoulder(-1);
    }

    /** The leg under the sword. */
    public Leg front() {
        return leg(1, posture.front(), FRONT_KNEE);
    }

    public Leg rear() {
        return leg(-1, posture.rear(), posture.rearKnee());
    }

    private Leg leg(int side, Posture.Foot foot, Point bend) {
        Point hip = trunk.hip(side);
        Point heel = at(foot.heel());
        Point toes = way(foot.toes()).unit();
        Point ankle = heel.plus(toes.times(HEEL)).plus(Point.UP.times(ANKLE));
        Point knee = Limb.joint(hip, ankle, THIGH, SHANK, way(bend));
        return new Leg(hip, knee, ankle, heel, heel.plus(toes.times(FOOT)));
    }

    /** The sword arm with its wrist at a place, or as near to it as it reaches. */
    public Arm swordArm(Point wrist) {
        return arm(swordShoulder(), wrist, way(SWORD_ELBOW));
    }

    public Arm rearArm(RearHand hand) {
        return arm(rearShoulder(), rearShoulder().plus(way(hand.wrist())), way(hand.elbow()));
    }

    private static Arm arm(Point shoulder, Point wanted, Point pole) {
        Point wrist = Limb.reach(shoulder, wanted, UPPER_ARM, FOREARM);
        return new Arm(shoulder, Limb.joint(shoulder, wrist, UPPER_ARM, FOREARM, pole), wrist);
    }

    public Head head(boolean masked) {
        Point shoulders = trunk.shoulderLine();
        Point centre = trunk.shoulders()
                .plus(trunk.up().times(0.190))
                .plus(axes.ahead().times(0.055))
                .plus(axes.front(shoulders, trunk.up()).times(0.01));
        Point looking = axes.way(1, -0.12, -0.06).unit();
        return new Head(centre, looking, Point.UP.squareTo(looking), masked);
    }

    /** The wrist of a hold. */
    public Point wrist(Hold hold) {
        return swordShoulder().plus(way(hold.wrist()));
    }

    /** The direction of the blade of a hold. */
    public Point direction(Hold hold) {
        return way(hold.direction());
    }
}
