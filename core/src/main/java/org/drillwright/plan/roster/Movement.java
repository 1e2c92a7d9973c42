package org.drillwright.plan.roster;

/** How people change over between rounds. */
public enum Movement {
    /** Two lines of which one walks, formed as seldom as lets the fewest meet again; a ring where that serves better. */
    WALK("walk"),
    /** The same, formed once for all that can be walked. */
    ONE("1"),
    /** The same, formed twice. */
    TWO("2"),
    /** Whatever gives the best partners; everyone reads the sheet. */
    FREE("free");

    private final String word;

    Movement(String word) {
        this.word = word;
    }

    /** The word that a class file uses. */
    public String word() {
        return word;
    }
}
