package org.drillwright.print.text;

import java.util.List;

/**
 * A word whose letters have taken form and place from one another. Lengths are shares of the type size.
 *
 * @param glyphs in the order in which they are drawn
 * @param advance how far the word moves the pen
 */
public record Shaped(List<Glyph> glyphs, double advance) {

    public Shaped {
        glyphs = List.copyOf(glyphs);
    }

    /**
     * A glyph and where its pen stands, measured from the word's beginning on the baseline.
     *
     * @param number of the glyph in its font
     * @param x to the right
     * @param y upwards
     * @param at where in the word its syllable begins
     * @param says the letters that it stands for; empty if a glyph beside it says them all
     */
    public record Glyph(int number, double x, double y, int at, String says) {}
}
