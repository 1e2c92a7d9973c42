package org.drillwright.model;

/** A card as it lies in the hand, upright. Sizes: ISO 216 for the A series, trade index cards for the inch sizes. */
public enum CardSize {
    A6("a6", 105, 148),
    A5("a5", 148, 210),
    INDEX_4X6("4x6", 101.6, 152.4);

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

    /** In millimetres. */
    public double width() {
        return width;
    }

    /** In millimetres. */
    public double height() {
        return height;
    }
}
