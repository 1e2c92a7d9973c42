package org.drillwright.print.impose;

import org.drillwright.print.frame.Millimetres;

/** Whether and when cards are laminated. */
public enum Laminate {
    NONE(0),
    /** Cards are cut first; each goes into a pouch that is larger than the card. */
    POUCH(0),
    /** The sheet is laminated first, then cut; the film round each card seals it. */
    SHEET(4);

    private final double gap;

    Laminate(double gap) {
        this.gap = gap;
    }

    /** The blank stretch that is left round each card when it is cut out: trade primers ask for 3 to 5 mm. */
    double gap() {
        return Millimetres.toPoints(gap);
    }

    /** Sharp corners of film scratch, and sharp corners of paper pierce a pouch. */
    boolean roundsCorners() {
        return this != NONE;
    }
}
