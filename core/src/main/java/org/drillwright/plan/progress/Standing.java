package org.drillwright.plan.progress;

/** How a person stands to a drill. */
public enum Standing {
    KNOWN("known"),
    /** Not known yet, but all that it needs is. */
    NEXT("next"),
    /** Something that it needs is not known yet. */
    LATER("");

    private final String word;

    Standing(String word) {
        this.word = word;
    }

    /** The word that a table shows. */
    public String word() {
        return word;
    }
}
