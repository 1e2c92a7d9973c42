package org.drillwright.print.text;

/** What must be known of a face to set it. Lengths are shares of the type size. */
public interface Typeface {

    /** Whether the face has a glyph for a character. */
    boolean covers(int codePoint);

    /** How far a character moves the pen; 0 for one that the face lacks. */
    double advance(int codePoint);

    /** What is added between two characters, mostly less than 0; 0 beside a space. */
    double kerning(int left, int right);

    /** The height of capitals and numerals over the baseline. */
    double capHeight();

    /** How far letters with their accents rise over the baseline. */
    double ascent();

    /** How far letters fall below the baseline, as a positive number. */
    double descent();

    /** The width of a word whose letters take form and place from one another. */
    double shapedWidth(String word);

    /** The width of a run, kerned, its letters joined where they do. */
    default double width(String run) {
        double width = 0;
        for (Stretch stretch : Stretch.of(run)) {
            width += stretch.shaped() ? shapedWidth(stretch.text()) : plainWidth(Joined.of(stretch.text()));
        }
        return width;
    }

    private double plainWidth(String text) {
        double width = 0;
        int before = -1;
        for (int at = 0; at < text.length(); ) {
            int codePoint = text.codePointAt(at);
            width += (before < 0 ? 0 : kerning(before, codePoint)) + advance(codePoint);
            before = codePoint;
            at += Character.charCount(codePoint);
        }
        return width;
    }
}
