package org.drillwright.model;

import java.util.Locale;
import java.util.Set;

/** A sheet that a printer takes, upright. Sizes: ISO 216, and ANSI/ASME Y14.1 for Letter; Legal by common practice. */
public enum SheetSize {
    A4("a4", 210, 297),
    A3("a3", 297, 420),
    LETTER("letter", 215.9, 279.4),
    LEGAL("legal", 215.9, 355.6);

    /** Where printers take Letter: CLDR 46, supplemental data, {@code paperSize}. */
    private static final Set<String> LETTER_REGIONS =
            Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE");

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

    /** What most printers of a region take; A4 where none is told. */
    public static SheetSize usualIn(Locale region) {
        return LETTER_REGIONS.contains(region.getCountry()) ? LETTER : A4;
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
