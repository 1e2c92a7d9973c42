package org.drillwright.print.text;

import java.util.List;

/**
 * What stands between two places where a line may end.
 *
 * @param parts what is drawn, without the space behind it
 * @param width of the parts
 * @param onward from this chunk's beginning to the next one's, if both are on a line
 * @param hyphen the width of the hyphen that is drawn if a line ends here; 0 if none is
 * @param spaced whether a space follows
 * @param manner how a line looks that ends here
 * @param pieces where a word too wide for its column is parted: behind its own hyphens and slashes; itself if nowhere
 */
record Chunk(
        List<Styled> parts,
        double width,
        double onward,
        double hyphen,
        boolean spaced,
        Manner manner,
        List<Chunk> pieces) {

    /** How a line looks that ends behind a chunk. */
    enum Manner {
        /** It parts what is read as one: a number from its unit, the first short word of a sentence from the rest. */
        PARTING,
        PLAIN,
        /** It ends where the reader pauses: behind a comma, a semicolon, a colon. */
        PAUSING
    }

    Chunk {
        parts = List.copyOf(parts);
        pieces = List.copyOf(pieces);
    }

    /** A chunk that is parted nowhere. */
    Chunk(List<Styled> parts, double width, double onward, double hyphen, boolean spaced, Manner manner) {
        this(parts, width, onward, hyphen, spaced, manner, List.of());
    }

    /** The width if a line ends behind it. */
    double atEnd() {
        return width + hyphen;
    }

    String text() {
        return Styled.text(parts);
    }

    /** Whether no line could end with it well: a word of up to five letters. */
    boolean isShort() {
        return text().codePoints().filter(Character::isLetterOrDigit).count() < LONG;
    }

    private static final int LONG = 6;
}
