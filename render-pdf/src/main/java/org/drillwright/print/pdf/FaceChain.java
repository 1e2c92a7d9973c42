package org.drillwright.print.pdf;

import java.util.List;
import org.drillwright.print.text.Stretch;
import org.drillwright.print.text.Typeface;

/**
 * A cut of a family, in one font or in several: what the first lacks is set in the next that has it. A word whose letters
 * take form from one another is set in one of them.
 */
record FaceChain(List<FontFace> fonts) implements Typeface {

    FaceChain {
        fonts = List.copyOf(fonts);
    }

    FontFace first() {
        return fonts.get(0);
    }

    /** The first that has a character; the first of all if none has. */
    FontFace with(int codePoint) {
        if (fonts.size() > 1 && !first().covers(codePoint)) {
            for (FontFace font : fonts) {
                if (font.covers(codePoint)) {
                    return font;
                }
            }
        }
        return first();
    }

    /** The first that has every letter of a word; the first of all if none has. */
    FontFace with(String word) {
        return fonts.stream()
                .filter(font -> word.codePoints().allMatch(letter -> font.covers(letter) || Stretch.isJoiner(letter)))
                .findFirst()
                .orElse(first());
    }

    @Override
    public boolean covers(int codePoint) {
        return fonts.stream().anyMatch(font -> font.covers(codePoint));
    }

    @Override
    public double advance(int codePoint) {
        return with(codePoint).advance(codePoint);
    }

    @Override
    public double kerning(int left, int right) {
        FontFace font = with(left);
        return font == with(right) ? font.kerning(left, right) : 0;
    }

    @Override
    public double capHeight() {
        return first().capHeight();
    }

    @Override
    public double ascent() {
        return first().ascent();
    }

    @Override
    public double descent() {
        return first().descent();
    }

    @Override
    public double shapedWidth(String word) {
        return with(word).shape(word).advance();
    }
}
