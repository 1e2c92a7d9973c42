package org.drillwright.print.impose;

/** Whether and when cards are laminated. */
public enum Laminate {
    NONE,
    /**
     * Cards are cut first, each is sealed in film that reaches beyond it: trade primers ask for 3 to 5 mm all round, and
     * pouches sold for a size of card are larger by that.
     */
    POUCH,
    /** The sheet is laminated first, then cut: film lies on every card, but no edge is sealed. */
    SHEET;

    /** Sharp corners of film scratch, and sharp corners of paper pierce a pouch. */
    boolean roundsCorners() {
        return this != NONE;
    }
}
