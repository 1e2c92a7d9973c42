package org.drillwright.plan.roster;

/** What a class is for. */
public enum Mode {
    /** At least one of two partners already knows the drill. */
    LEARNING("learning"),
    /** Partners are near each other in skill. */
    TRAINING("training");

    private final String word;

    Mode(String word) {
        this.word = word;
    }

    /** The word that a class file uses. */
    public String word() {
        return word;
    }
}
