package org.drillwright.print.diagram.stage;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.drillwright.notation.Line;
import org.drillwright.print.frame.Rectangle;

/**
 * The lines of one attacked, in the frame in which the partner sees that one: a cross parts the four lines of a thrusting
 * weapon (Encyclopaedia Britannica, 11th ed., p. 593; Warford 1884, p. 10), at sabre head, outside and inside.
 */
final class TargetLines {

    private final Map<Line, Rectangle> areas = new LinkedHashMap<>();

    /**
     * @param middle where the cross parts outside and inside
     * @param level where it parts high and low, at sabre the head and what is below
     * @param insideRight whether the inside is on the right
     */
    TargetLines(Rectangle frame, double middle, double level, boolean insideRight, boolean sabre) {
        Rectangle left = new Rectangle(frame.x(), frame.y(), middle - frame.x(), level - frame.y());
        Rectangle right = new Rectangle(middle, frame.y(), frame.right() - middle, level - frame.y());
        Rectangle lowLeft = new Rectangle(frame.x(), level, middle - frame.x(), frame.bottom() - level);
        Rectangle lowRight = new Rectangle(middle, level, frame.right() - middle, frame.bottom() - level);
        if (sabre) {
            areas.put(Line.HEAD, new Rectangle(frame.x(), frame.y(), frame.width(), level - frame.y()));
            areas.put(Line.OUTSIDE, insideRight ? lowLeft : lowRight);
            areas.put(Line.INSIDE, insideRight ? lowRight : lowLeft);
        } else {
            areas.put(Line.HIGH_OUTSIDE, insideRight ? left : right);
            areas.put(Line.HIGH_INSIDE, insideRight ? right : left);
            areas.put(Line.LOW_OUTSIDE, insideRight ? lowLeft : lowRight);
            areas.put(Line.LOW_INSIDE, insideRight ? lowRight : lowLeft);
        }
    }

    /** The area of a line, empty where that is no line of this weapon's picture: an arm. */
    Optional<Rectangle> area(Line line) {
        return Optional.ofNullable(areas.get(line));
    }
}
