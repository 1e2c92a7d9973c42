package org.drillwright.check;

/** What a master may do about a fault, in whole sentences; {@link Ways} makes it of what was played, and nobody else. */
public final class WayOut {

    /** Where nothing plays that a rule could name. */
    public static final WayOut NONE = new WayOut("", "");

    private final String words;
    private final String condition;

    /** @param condition what has to change besides; empty if nothing has */
    WayOut(String words, String condition) {
        this.words = words;
        this.condition = condition;
    }

    /** Its sentences; empty if there are none. */
    public String words() {
        return (words + " " + condition).strip();
    }

    /** This, and the other behind it; a condition of both is told once. */
    public WayOut and(WayOut other) {
        String first = condition.equals(other.condition) ? words : words();
        return new WayOut((first + " " + other.words).strip(), other.condition);
    }
}
