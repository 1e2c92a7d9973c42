package org.drillwright.phrase;

import org.drillwright.model.Hands;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Width;

/**
 * Names one place from the other's body. Between two of the same hand both are engaged inside or both outside; between
 * opposite hands the same contact has two names (L'Abbat XXII; Burton 1876, section 2).
 */
final class Mirror {

    private Mirror() {}

    /** The line of the partner that lies before one's own line. */
    static Line across(Line own, Hands hands) {
        return hands == Hands.SAME ? own : otherSide(own);
    }

    /** The line of the same height on the other side of the blade. */
    static Line otherSide(Line line) {
        return switch (line) {
            case HIGH_INSIDE -> Line.HIGH_OUTSIDE;
            case HIGH_OUTSIDE -> Line.HIGH_INSIDE;
            case LOW_INSIDE -> Line.LOW_OUTSIDE;
            case LOW_OUTSIDE -> Line.LOW_INSIDE;
            case INSIDE -> Line.OUTSIDE;
            case OUTSIDE -> Line.INSIDE;
            case HEAD, ARM -> line;
        };
    }

    static boolean sameHeight(Line one, Line other) {
        return one.height().equals(other.height());
    }

    static boolean sameSide(Line one, Line other) {
        return one.width().equals(other.width());
    }

    static Height heightOf(Line line) {
        return line.height().orElse(Height.HIGH);
    }

    static Width widthOf(Line line) {
        return line.width().orElse(Width.INSIDE);
    }
}
