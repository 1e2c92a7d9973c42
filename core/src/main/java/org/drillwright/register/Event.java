package org.drillwright.register;

import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a line of the record says of a person. */
public enum Event {
    ATTENDED("attended"),
    WORKED_WITH("worked with"),
    SIGNED_OFF("signed off"),
    /** From that line on the person is called as the other name says. */
    RENAMED("renamed"),
    /** The person doesn't come any more; what was done stays. */
    LEFT("left"),
    RETURNED("returned"),
    /** Two who train on their own: they want to meet on that day. */
    AGREED("agreed"),
    KEPT("kept"),
    CAME_LATE("came late"),
    DID_NOT_COME("did not come"),
    CALLED_OFF("called off"),
    /** How long the two worked, with the number of minutes behind it. */
    WORKED_MINUTES("worked minutes"),
    LED_FIRST("led first");

    private static final Pattern MINUTES = Pattern.compile("worked minutes (\\d{1,4})");

    private final String word;

    Event(String word) {
        this.word = word;
    }

    /** Whether it tells of a class, and not of somebody's coming and going. */
    public boolean isOfAClass() {
        return this == ATTENDED || this == WORKED_WITH || this == SIGNED_OFF;
    }

    /** Whether it tells of two who train on their own. */
    public boolean isOfTwo() {
        return compareTo(AGREED) >= 0;
    }

    /** The words that the file uses. */
    public String word() {
        return word;
    }

    /** The number behind the words; empty if there is none. */
    static String minutes(String word) {
        Matcher minutes = MINUTES.matcher(word);
        return minutes.matches() ? minutes.group(1) : "";
    }

    static Optional<Event> of(String word) {
        String bare = MINUTES.matcher(word).matches() ? WORKED_MINUTES.word : word;
        return Arrays.stream(values()).filter(event -> event.word.equals(bare)).findFirst();
    }
}
