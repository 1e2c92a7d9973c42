package org.drillwright.record;

import java.util.Arrays;
import java.util.Optional;

/** What a line of the record says of a person. */
public enum Event {
    ATTENDED("attended"),
    WORKED_WITH("worked with"),
    SIGNED_OFF("signed off"),
    /** From that line on the person is called as the other name says. */
    RENAMED("renamed"),
    /** The person doesn't come any more; what was done stays. */
    LEFT("left"),
    RETURNED("returned");

    private final String word;

    Event(String word) {
        this.word = word;
    }

    /** Whether it tells of a class, and not of somebody's coming and going. */
    public boolean isOfAClass() {
        return this == ATTENDED || this == WORKED_WITH || this == SIGNED_OFF;
    }

    /** The words that the file uses. */
    public String word() {
        return word;
    }

    static Optional<Event> of(String word) {
        return Arrays.stream(values()).filter(event -> event.word.equals(word)).findFirst();
    }
}
