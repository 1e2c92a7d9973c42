package org.drillwright.model;

/** A sheet that a printer takes, upright. Sizes: ISO 216, and ANSI/ASME Y14.1 for Letter; Legal by common practice. */
public enum SheetSize {
    A4("a4", 210, 297),
    A3("a3", 297, 420),
    LETTER("letter", 215.9, 279.4),
    LEGAL("legal", 215.9, 355.6);

    private final String word;
    private final double width;
    private final double height;

    SheetSize(String word, double width, double height) {
        this.word = word;
        this.width = width;
        this.height = height;
    }

    /** The word that a school file and the command line use. */
    public String word() {
        return word;
    }

    /** The card that is printed where nothing else is asked for: four of a sheet. */
    public CardSize usualCard() {
        return switch (this) {
            case A4, A3 -> CardSize.A6;
            case LETTER, LEGAL -> CardSize.QUARTER_LETTER;
        };
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
