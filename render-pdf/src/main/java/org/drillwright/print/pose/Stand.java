package org.drillwright.print.pose;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.print.pose.body.Arm;
import org.drillwright.print.pose.body.Axes;
import org.drillwright.print.pose.body.Blade;
import org.drillwright.print.pose.body.Body;
import org.drillwright.print.pose.body.Hold;
import org.drillwright.print.pose.body.Point;
import org.drillwright.print.pose.body.PosedBody;
import org.drillwright.print.pose.body.Posture;
import org.drillwright.print.pose.body.RearHand;

/**
 * How one of the two stands, before it is known where the sword arm is.
 *
 * @param toe where the front toe is along the piste, in metres
 */
record Stand(Side side, boolean leftHanded, double toe, Posture posture, RearHand rear, boolean masked, boolean known) {

    Axes axes() {
        return Axes.of(side, leftHanded, toe);
    }

    Body body() {
        return new Body(axes(), posture);
    }

    Stand leaning(double further) {
        return in(posture.leaning(further));
    }

    /** The weight brought to the front foot by so many metres. */
    Stand forward(double further) {
        return in(posture.forward(further));
    }

    Stand at(double place) {
        return new Stand(side, leftHanded, place, posture, rear, masked, known);
    }

    Stand in(Posture other) {
        return new Stand(side, leftHanded, toe, other, rear, masked, known);
    }

    Stand with(RearHand hand) {
        return new Stand(side, leftHanded, toe, posture, hand, masked, known);
    }

    /** Nearer to the partner by so many metres. */
    Stand ahead(double further) {
        return at(toe + (side == Side.LEADER ? further : -further));
    }

    /** The hand and a straight blade as in a hold; without a blade if its length is 0. */
    PosedBody holding(Hold hold, double length) {
        Body body = body();
        return with(body.wrist(hold), body.direction(hold), length);
    }

    /** The wrist at a place, or as near as it reaches, and a straight blade in a direction. */
    PosedBody with(Point wrist, Point direction, double length) {
        Arm arm = body().swordArm(wrist);
        Point bell = arm.wrist().plus(direction.times(Arms.GRIP));
        return with(
                Optional.of(arm),
                length == 0 ? Optional.empty() : Optional.of(Blade.straight(bell, bell.plus(direction.times(length)))));
    }

    PosedBody with(Optional<Arm> arm, Optional<Blade> blade) {
        Body body = body();
        return new PosedBody(
                side,
                leftHanded,
                body.axes().ahead(),
                body.axes().outside(),
                body.torso(),
                body.head(masked),
                body.front(),
                body.rear(),
                arm,
                body.rearArm(rear),
                blade,
                rear.equals(RearHand.WITH_MASK),
                known);
    }
}
