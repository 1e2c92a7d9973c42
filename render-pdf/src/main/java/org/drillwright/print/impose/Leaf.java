package org.drillwright.print.impose;

import java.util.Optional;
import org.drillwright.print.frame.Frame;

/**
 * One card of paper.
 *
 * @param back as large as the front; nothing if it stays blank
 */
public record Leaf(Frame front, Optional<Frame> back) {

    public Leaf {
        if (back.filter(other -> !sameSize(front, other)).isPresent()) {
            throw new IllegalArgumentException("a card's back is not as large as its front");
        }
    }

    public static Leaf of(Frame front) {
        return new Leaf(front, Optional.empty());
    }

    static boolean sameSize(Frame one, Frame other) {
        return one.width() == other.width() && one.height() == other.height();
    }
}
