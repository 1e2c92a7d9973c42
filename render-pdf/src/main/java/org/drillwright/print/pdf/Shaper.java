package org.drillwright.print.pdf;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.font.TextAttribute;
import java.awt.geom.Point2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.drillwright.print.text.GlyphCoverage;
import org.drillwright.print.text.Shaped;

/**
 * Gives the letters of a word form, order and place by the rules that its font holds (the tables GSUB and GPOS of OpenType).
 * The only user of the JDK's own layout, which starts up only here: few names need it, and it takes a tenth of a second.
 */
final class Shaper {

    /** A glyph that was taken into another, as the JDK marks it. */
    private static final int GONE = 0xFFFE;

    private static final FontRenderContext UNHINTED = new FontRenderContext(null, true, true);

    private final Font font;
    private final int unitsPerEm;
    private final IntUnaryOperator letterOf;

    /** @param letterOf the character that a glyph is the usual sign of; 0 if it is that of none */
    private Shaper(Font font, int unitsPerEm, IntUnaryOperator letterOf) {
        this.font = font;
        this.unitsPerEm = unitsPerEm;
        this.letterOf = letterOf;
    }

    static Shaper of(TrueTypeFont file, IntUnaryOperator letterOf) {
        try (InputStream in = file.getOriginalData()) {
            int unitsPerEm = file.getUnitsPerEm();
            Font font = Font.createFont(Font.TRUETYPE_FONT, in)
                    .deriveFont((float) unitsPerEm)
                    .deriveFont(Map.of(
                            TextAttribute.KERNING, TextAttribute.KERNING_ON,
                            TextAttribute.LIGATURES, TextAttribute.LIGATURES_ON));
            return new Shaper(font, unitsPerEm, letterOf);
        } catch (IOException broken) {
            throw new UncheckedIOException("a font cannot be read", broken);
        } catch (FontFormatException broken) {
            throw new UncheckedIOException(new IOException("a font's rules cannot be read", broken));
        }
    }

    Shaped shape(String word) {
        char[] units = word.toCharArray();
        boolean rightToLeft = word.codePoints().anyMatch(GlyphCoverage::isRightToLeft);
        int way = rightToLeft ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT;
        GlyphVector set = font.layoutGlyphVector(UNHINTED, units, 0, units.length, way);
        List<Integer> shown = new ArrayList<>();
        for (int at = 0; at < set.getNumGlyphs(); at++) {
            if (set.getGlyphCode(at) < GONE) {
                shown.add(at);
            }
        }
        List<Shaped.Glyph> glyphs = new ArrayList<>();
        for (int at : shown) {
            Point2D place = set.getGlyphPosition(at);
            glyphs.add(new Shaped.Glyph(
                    set.getGlyphCode(at),
                    place.getX() / unitsPerEm,
                    -place.getY() / unitsPerEm,
                    set.getGlyphCharIndex(at),
                    says(at, set, shown, word)));
        }
        return new Shaped(glyphs, set.getGlyphPosition(set.getNumGlyphs()).getX() / unitsPerEm);
    }

    /**
     * What a glyph says of its syllable: its own letter; a glyph that has none, what the others leave unsaid, if it is the first
     * of such.
     */
    private String says(int at, GlyphVector set, List<Integer> shown, String word) {
        int letter = letterOf.applyAsInt(set.getGlyphCode(at));
        if (letter != 0) {
            return Character.toString(letter);
        }
        int begin = set.getGlyphCharIndex(at);
        List<Integer> together = shown.stream()
                .filter(one -> set.getGlyphCharIndex(one) == begin)
                .toList();
        List<Integer> nameless = together.stream()
                .filter(one -> letterOf.applyAsInt(set.getGlyphCode(one)) == 0)
                .toList();
        if (nameless.get(0) != at) {
            return "";
        }
        int end = shown.stream()
                .mapToInt(set::getGlyphCharIndex)
                .filter(other -> other > begin)
                .min()
                .orElse(word.length());
        List<Integer> said = new ArrayList<>(together.stream()
                .map(one -> letterOf.applyAsInt(set.getGlyphCode(one)))
                .toList());
        return Arrays.stream(word.substring(begin, end).codePoints().toArray())
                .filter(one -> !said.remove((Integer) one))
                .mapToObj(Character::toString)
                .collect(Collectors.joining());
    }
}
