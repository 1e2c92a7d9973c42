package org.drillwright.phrase;

import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Line;

/**
 * Blades that touch.
 *
 * @param leader the line, named from the leader's own body
 * @param follower the same contact, named from the follower's own body
 * @param holder who took it, changed it or pressed last; that one's line is closed
 * @param taken whether the holder has taken the blade with a bind, a croisé or an envelopment, and not only met it
 */
public record Engagement(Line leader, Line follower, Optional<Side> holder, boolean taken) {

    /** Blades that have only met. */
    public Engagement(Line leader, Line follower, Optional<Side> holder) {
        this(leader, follower, holder, false);
    }

    /** The same contact, the blade of the other held by who took it. */
    Engagement takenBy(Side side) {
        return new Engagement(leader, follower, Optional.of(side), true);
    }

    /** Whether a side's blade has been taken by the other. */
    public boolean holds(Side side) {
        return taken && holder.equals(Optional.of(side.other()));
    }

    /** The contact's line, named from one side's own body. */
    public Line lineOf(Side side) {
        return side == Side.LEADER ? leader : follower;
    }

    static Engagement of(Side owner, Line ownLine, Line partnersLine, Optional<Side> holder) {
        return owner == Side.LEADER
                ? new Engagement(ownLine, partnersLine, holder)
                : new Engagement(partnersLine, ownLine, holder);
    }
}
