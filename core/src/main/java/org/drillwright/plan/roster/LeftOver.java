package org.drillwright.plan.roster;

/** What those do for whom no partner is left in a round. */
public enum LeftOver {
    /** They join a pair in which someone knows the drill; where all pairs are taken, solo work. */
    THREES("threes"),
    /** Solo work, or watching. */
    SOLO("solo"),
    /** As {@link #THREES}, but before that two who are both new to the drill work together. */
    BOTH_NEW("both-new");

    private final String word;

    LeftOver(String word) {
        this.word = word;
    }

    /** The word that a class file uses. */
    public String word() {
        return word;
    }
}
