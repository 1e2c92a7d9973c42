package org.drillwright.print.pdf;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.drillwright.print.text.Shaped;

/** One face as one document embeds it: only the glyphs that it uses. */
final class EmbeddedFace {

    private static final int COMMON = 0x180;

    private final COSName name;
    private final PDType0Font font;
    private final FontFace measures;
    private final int[] common = new int[COMMON];
    private final Map<Integer, Integer> rare = new HashMap<>();

    /** What glyphs say that are the usual sign of no character, as their word was when they were first shown. */
    private final Map<Integer, String> formed = new TreeMap<>();

    EmbeddedFace(PDDocument document, FontFace face, COSName name) throws IOException {
        this.font = PDType0Font.load(document, face.font(), true);
        this.measures = face;
        this.name = name;
    }

    /** By which pages call it. */
    COSName name() {
        return name;
    }

    PDType0Font font() {
        return font;
    }

    FontFace measures() {
        return measures;
    }

    /** The number by which text shows a character; the first time, its glyph is put among those to be embedded. */
    int glyph(int codePoint) throws IOException {
        if (codePoint >= COMMON) {
            Integer known = rare.get(codePoint);
            return known != null ? known : embed(codePoint);
        }
        // No character is shown as glyph 0, which stands for those that a font lacks.
        return common[codePoint] != 0 ? common[codePoint] : embed(codePoint);
    }

    private int embed(int codePoint) throws IOException {
        byte[] code = font.encode(Character.toString(codePoint));
        font.addToSubset(codePoint);
        int glyph = ((code[0] & 0xFF) << 8) | (code[1] & 0xFF);
        if (codePoint < COMMON) {
            common[codePoint] = glyph;
        } else {
            rare.put(codePoint, glyph);
        }
        return glyph;
    }

    /** Puts a glyph of a word that was shaped among those to be embedded. */
    void glyph(Shaped.Glyph glyph) {
        font.addGlyphsToSubset(Set.of(glyph.number()));
        if (measures.letter(glyph.number()) == 0) {
            formed.putIfAbsent(glyph.number(), glyph.says());
        }
    }

    /** Leaves only what was shown in the font, and says what each of its glyphs stands for. */
    void finish() throws IOException {
        font.subset();
        if (!formed.isEmpty()) {
            UnicodeMap.add(formed, font);
        }
    }
}
