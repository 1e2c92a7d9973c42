package org.drillwright.print.frame;

/** A cut of the card's one type family. */
public enum Face {
    REGULAR,
    BOLD
}
