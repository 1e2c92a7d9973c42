package org.drillwright.model;

/** Whether the two hold their weapons in hands of the same side. */
public enum Hands {
    SAME("same"),
    OPPOSITE("opposite");

    private final String word;

    Hands(String word) {
        this.word = word;
    }

    /** The word that a drill file uses. */
    public String word() {
        return word;
    }
}
