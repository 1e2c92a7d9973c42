package org.drillwright.model;

/** One of the two sides of a drill. */
public enum Side {
    LEADER("leader"),
    FOLLOWER("follower");

    private final String word;

    Side(String word) {
        this.word = word;
    }

    /** The word that a drill file uses. */
    public String word() {
        return word;
    }

    public Side other() {
        return this == LEADER ? FOLLOWER : LEADER;
    }
}
