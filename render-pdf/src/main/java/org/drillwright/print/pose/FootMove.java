package org.drillwright.print.pose;

import org.drillwright.model.Side;

/**
 * What feet did in the count.
 *
 * @param from where the front toe was (the rear heel, if only the rear foot moved or passed), along the piste in metres
 * @param to where it is now
 */
public record FootMove(Side by, Kind kind, double from, double to) {

    /** Which feet, and how. */
    public enum Kind {
        FRONT_FOOT,
        REAR_FOOT,
        BOTH_FEET,
        /** Both feet, the rear one past the front one and the other way round. */
        CROSSING,
        JUMP,
        /** A flèche: the rear foot passes, and the front foot has not come after it yet. */
        PASSING,
        /** The front foot strikes the floor where it is. */
        STAMP;

        /** Whether it is told by the rear heel where it was and is. */
        boolean ofTheRearFoot() {
            return this == REAR_FOOT || this == PASSING;
        }
    }
}
