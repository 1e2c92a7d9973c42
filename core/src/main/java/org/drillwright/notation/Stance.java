package org.drillwright.notation;

import java.util.Optional;

/**
 * How a person stands on guard, as far as the words say.
 *
 * @param guard the position of the hand
 * @param engaged whether the blades touch
 * @param engagement the position in which they do, if it is named
 */
public record Stance(Optional<Position> guard, Optional<Boolean> engaged, Optional<Position> engagement) {

    public static final Stance UNSTATED = new Stance(Optional.empty(), Optional.empty(), Optional.empty());

    /** On guard in a position, of which no more is said. */
    public static Stance in(Position guard) {
        return new Stance(Optional.of(guard), Optional.empty(), Optional.empty());
    }

    /** The blades touch, or don't, of which no more is said. */
    public static Stance touching(boolean engaged) {
        return new Stance(Optional.empty(), Optional.of(engaged), Optional.empty());
    }

    /** The same guard, the blades as in another stance. */
    public Stance touchingAs(Stance other) {
        return new Stance(guard, other.engaged, other.engagement);
    }

    public boolean isStated() {
        return guard.isPresent() || engaged.isPresent();
    }
}
