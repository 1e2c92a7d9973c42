package org.drillwright.print.text;

import org.drillwright.print.frame.Face;

/** A family in which every character is as wide as the type is high, so that widths are counted by hand. */
final class Squares implements Typefaces, Typeface {

    @Override
    public Typeface of(Face face) {
        return this;
    }

    @Override
    public boolean covers(int codePoint) {
        return codePoint >= ' ' && codePoint < 0x250;
    }

    @Override
    public double advance(int codePoint) {
        return 1;
    }

    @Override
    public double kerning(int left, int right) {
        return 0;
    }

    @Override
    public double capHeight() {
        return 0.7;
    }

    @Override
    public double ascent() {
        return 0.9;
    }

    @Override
    public double descent() {
        return 0.2;
    }

    @Override
    public double shapedWidth(String word) {
        return word.codePointCount(0, word.length());
    }
}
