package org.drillwright.plan.roster;

/** When two who are both new to a drill may work together, somebody's eyes on them. */
public enum BothNew {
    /** Never. */
    NEVER("never"),
    /** Where those who know the drill and those who help can't serve all who are new. */
    NEEDED("where-needed"),
    /** Before anybody joins a pair as its third. */
    WANTED("wanted");

    private final String word;

    BothNew(String word) {
        this.word = word;
    }

    /** The word that a class file uses. */
    public String word() {
        return word;
    }
}
