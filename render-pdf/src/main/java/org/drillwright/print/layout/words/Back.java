package org.drillwright.print.layout.words;

/** What is printed behind a card. */
public enum Back {
    NONE,
    /** The pictures of the counts, in words too, with the drill's purpose and notes. */
    PICTURES,
    /** The conduct of the hall and the legend of the pictures. */
    SAFETY
}
