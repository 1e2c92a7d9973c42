package org.drillwright.record;

import java.util.Arrays;
import java.util.Optional;

/** What a line of the record says of a person. */
public enum Event {
    ATTENDED("attended"),
    WORKED_WITH("worked with"),
    SIGNED_OFF("signed off");

    private final String word;

    Event(String word) {
        this.word = word;
    }

    /** The words that the file uses. */
    public String word() {
        return word;
    }

    static Optional<Event> of(String word) {
        return Arrays.stream(values()).filter(event -> event.word.equals(word)).findFirst();
    }
}
