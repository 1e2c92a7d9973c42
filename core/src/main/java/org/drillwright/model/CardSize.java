package org.drillwright.model;

/**
 * A card as it lies in the hand or hangs on the wall, upright, the smaller before the larger. Sizes: ISO 216 for the A
 * series, trade index cards for the inch sizes, ANSI/ASME Y14.1 for the parts of a Letter sheet.
 */
public enum CardSize {
    A7("a7", 74, 105),
    INDEX_3X5("3x5", 76.2, 127),
    /** Four of a Letter sheet. */
    QUARTER_LETTER("quarter-letter", 107.95, 139.7),
    INDEX_4X6("4x6", 101.6, 152.4),
    A6("a6", 105, 148),
    INDEX_5X8("5x8", 127, 203.2),
    /** Two of a Letter sheet. */
    HALF_LETTER("half-letter", 139.7, 215.9),
    A5("a5", 148, 210),
    /** To be read from across the hall. */
    WALL_A4("wall-a4", 210, 297),
    /** To be read from across the hall. */
    WALL_A3("wall-a3", 297, 420);

    private final String word;
    private final double width;
    private final double height;

    CardSize(String word, double width, double height) {
        this.word = word;
        this.width = width;
        this.height = height;
    }

    /** The word that a school file and the command line use. */
    public String word() {
        return word;
    }

    /** Whether it hangs on the wall instead of being worn or held. */
    public boolean isForTheWall() {
        return this == WALL_A4 || this == WALL_A3;
    }

    /** In millimetres. */
    public double width() {
        return width;
    }

    /** In millimetres. */
    public double height() {
        return height;
    }
}
