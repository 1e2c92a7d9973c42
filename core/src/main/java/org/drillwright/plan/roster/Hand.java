package org.drillwright.plan.roster;

/** The hand that holds the weapon. */
public enum Hand {
    RIGHT("right"),
    LEFT("left");

    private final String word;

    Hand(String word) {
        this.word = word;
    }

    /** The word that a roster uses. */
    public String word() {
        return word;
    }
}
