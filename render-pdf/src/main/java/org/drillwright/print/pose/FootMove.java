package org.drillwright.print.pose;

import org.drillwright.model.Side;

/**
 * What feet did in the count.
 *
 * @param from where the front toe was (the rear heel, if only the rear foot moved), along the piste in metres
 * @param to where it is now
 */
public record FootMove(Side by, Kind kind, double from, double to) {

    /** Which feet, and how. */
    public enum Kind {
        FRONT_FOOT,
        REAR_FOOT,
        BOTH_FEET,
        JUMP
    }
}
