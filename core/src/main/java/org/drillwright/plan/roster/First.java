package org.drillwright.plan.roster;

/** Who of two leads first. */
public enum First {
    /** Everybody by turns, as evenly as can be. */
    TURNS("turns"),
    /** Whoever knows the drill, where only one of the two does; else by turns. */
    KNOWER("knower");

    private final String word;

    First(String word) {
        this.word = word;
    }

    /** The word that a class file uses. */
    public String word() {
        return word;
    }
}
