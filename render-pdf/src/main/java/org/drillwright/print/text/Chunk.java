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
 * @param lonely whether it is a word of one letter, which no line should end with
 */
record Chunk(List<Styled> parts, double width, double onward, double hyphen, boolean spaced, boolean lonely) {

    Chunk {
        parts = List.copyOf(parts);
    }

    /** The width if a line ends behind it. */
    double atEnd() {
        return width + hyphen;
    }

    String text() {
        return Styled.text(parts);
    }
}
