package org.drillwright.model;

/** Who does what in a drill. */
public enum Form {
    /** Two people: a leader and a follower. */
    PARTNER("partner"),
    /** A caller and a class: the leader's turn is the caller's word, the follower's what the class does. */
    SOLO("solo");

    private final String word;

    Form(String word) {
        this.word = word;
    }

    /** The word that a drill file uses. */
    public String word() {
        return word;
    }
}
