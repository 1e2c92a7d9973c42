package org.drillwright.plan.roster;

/** How people change over between rounds. */
public enum Movement {
    /** A movement that a class can walk (one line steps, or a ring turns), wherever there is one. */
    WALK("walk"),
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
