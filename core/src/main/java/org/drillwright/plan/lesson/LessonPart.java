package org.drillwright.plan.lesson;

import java.time.Duration;

/**
 * A part of a lesson.
 *
 * @param name a drill's id, what a part of the school's own is called, or what the part is
 * @param start from the beginning of the class
 * @param end from the beginning of the class
 * @param how what is done in a part of the school's own; otherwise empty
 */
public record LessonPart(Kind kind, String name, Duration start, Duration end, String how) {

    /** What sort of part it is. */
    public enum Kind {
        OPENING,
        WARM_UP,
        BEFORE,
        DRILL,
        BETWEEN,
        SPARE,
        AFTER,
        CLOSING
    }

    public Duration length() {
        return end.minus(start);
    }
}
