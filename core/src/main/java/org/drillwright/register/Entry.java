package org.drillwright.register;

import java.time.LocalDate;

/**
 * One line of the record.
 *
 * @param drill a drill's id, empty where the line is about the class as a whole; how many minutes two worked on
 *     their own, where the line tells that
 * @param with the other person, empty unless the two worked together; the new name where somebody was renamed; {@link History#INSTRUCTOR} for whoever taught
 */
public record Entry(LocalDate date, String person, String drill, Event event, String with) {

    public static Entry attended(LocalDate date, String person) {
        return new Entry(date, person, "", Event.ATTENDED, "");
    }

    public static Entry workedWith(LocalDate date, String person, String drill, String with) {
        return new Entry(date, person, drill, Event.WORKED_WITH, with);
    }

    public static Entry signedOff(LocalDate date, String person, String drill) {
        return new Entry(date, person, drill, Event.SIGNED_OFF, "");
    }

    public static Entry renamed(LocalDate date, String old, String now) {
        return new Entry(date, old, "", Event.RENAMED, now);
    }

    public static Entry left(LocalDate date, String person) {
        return new Entry(date, person, "", Event.LEFT, "");
    }

    public static Entry returned(LocalDate date, String person) {
        return new Entry(date, person, "", Event.RETURNED, "");
    }

    /** The same fact told from that side which comes first; itself where only one is named. */
    Entry plain() {
        return event == Event.WORKED_WITH && with.compareTo(person) < 0
                ? new Entry(date, /* person= */ with, drill, event, /* with= */ person)
                : this;
    }
}
