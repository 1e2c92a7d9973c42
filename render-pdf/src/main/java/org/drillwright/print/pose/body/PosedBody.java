package org.drillwright.print.pose.body;

import java.util.Optional;
import org.drillwright.model.Side;

/**
 * One of the two, as a body.
 *
 * @param ahead the direction to the partner, one metre long
 * @param outside the direction to the side of the sword, one metre long
 * @param swordArm empty if it is not known what the hand or the arm does
 * @param blade empty without a weapon, or if it is not known where the blade is
 * @param maskInHand whether the rear hand holds the mask
 * @param feetKnown whether it is known how the person stands; if not, this is no more than a place holder
 */
public record PosedBody(
        Side side,
        boolean leftHanded,
        Point ahead,
        Point outside,
        Trunk trunk,
        Head head,
        Leg front,
        Leg rear,
        Optional<Arm> swordArm,
        Arm rearArm,
        Optional<Blade> blade,
        boolean maskInHand,
        boolean feetKnown) {

    /** The joint of the sword arm's shoulder, also where it is not known what the arm does. */
    public Point swordShoulder() {
        return trunk.shoulder(1);
    }
}
