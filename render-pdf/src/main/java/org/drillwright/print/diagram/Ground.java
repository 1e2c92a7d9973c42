package org.drillwright.print.diagram;

import org.drillwright.phrase.Feet;
import org.drillwright.phrase.Range;
import org.drillwright.phrase.State;

/**
 * Where the two stand, in units along the ground. True to scale in the one thing that counts: what a lunge or a step
 * gains is everywhere the same length, and at extension distance the blade of a straight arm just arrives.
 *
 * @param leaderToe where the leader's front foot ends
 * @param followerToe where the follower's front foot ends
 */
record Ground(double leaderToe, double followerToe) {

    /** What one foot action gains. */
    static final double STEP = 12;

    /** From rear foot to front foot, on guard. */
    static final double STANCE = 22;

    /** Between the front feet where the extended blade just arrives. */
    static final double REACH = 16;

    /** Beyond this no touch is near. */
    static final int FAR = 3;

    /** How near to each other they are drawn at close distance, in foot actions. */
    private static final double CLOSE = -0.9;

    /** How far apart they are drawn out of distance: the bar under them is broken there, and its dots tell. */
    private static final double OUT = 2.8;

    static Ground of(State state) {
        double leader = depth(state.leader().feet().value().orElse(Feet.ON_GUARD));
        double follower = depth(state.follower().feet().value().orElse(Feet.ON_GUARD));
        double gap = Math.min(REACH + STEP * steps(state.measure()), Pad.WIDTH - leader - follower);
        double toe = (Pad.WIDTH - leader - follower - gap) / 2 + leader;
        return new Ground(toe, toe + gap);
    }

    /** The room that a person takes from the heel of the rear foot to the toe. */
    static double depth(Feet feet) {
        return switch (feet) {
            case STANDING -> 14;
            case ON_GUARD -> STANCE;
            case LUNGED -> STANCE + STEP;
        };
    }

    private static double steps(Range measure) {
        if (!measure.isKnown() || measure.least() >= FAR) {
            return OUT;
        }
        return measure.most() < 0 ? CLOSE : Math.max(CLOSE, measure.least());
    }
}
