package org.drillwright.report.calendar;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.published.Publication;

/**
 * What became of an event from plan to plan.
 *
 * @param last what is told of it now; of a class that was dropped what was told last
 * @param changed when it was changed last
 * @param sequence how many plans changed it after the one that told of it first (RFC 5545, section 3.8.7.4)
 * @param cancelled whether the last plan has it no more (section 3.8.1.11)
 */
record EventHistory(CalendarEvent last, Instant changed, int sequence, boolean cancelled) {

    /** How a plan tells of the event. */
    interface Told {
        /** Nothing if it isn't in that plan. */
        Optional<CalendarEvent> in(Publication plan);
    }

    /** Of plans that one by one took over from each other; nothing if none of them has it. */
    static Optional<EventHistory> of(List<Publication> line, Told told) {
        Optional<EventHistory> story = Optional.empty();
        for (Publication plan : line) {
            Optional<CalendarEvent> now = told.in(plan);
            Optional<EventHistory> before = story;
            story = before.isEmpty()
                    ? now.map(event -> new EventHistory(event, plan.published(), 0, false))
                    : Optional.of(before.get().then(now, plan.published()));
        }
        return story;
    }

    private EventHistory then(Optional<CalendarEvent> now, Instant at) {
        boolean same = now.isPresent() ? !cancelled && now.get().equals(last) : cancelled;
        return same ? this : new EventHistory(now.orElse(last), at, sequence + 1, now.isEmpty());
    }
}
