package org.drillwright.plan.lesson;

import java.time.Duration;

/**
 * A part of a lesson.
 *
 * @param name a drill's id, or what the part is
 * @param start from the beginning of the class
 * @param end from the beginning of the class
 */
public record Block(Kind kind, String name, Duration start, Duration end) {

    /** What sort of part it is. */
    public enum Kind {
        OPENING,
        WARM_UP,
        DRILL,
        CLOSING
    }

    public Duration length() {
        return end.minus(start);
    }
}
