package org.drillwright.print.pdf;

import java.io.IOException;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.drillwright.print.text.Typeface;

/** One face as one document embeds it: only the glyphs that it uses. */
final class EmbeddedFace {

    private static final int COMMON = 0x180;

    private final COSName name;
    private final PDType0Font font;
    private final Typeface measures;
    private final int[] common = new int[COMMON];
    private final Map<Integer, Integer> rare = new HashMap<>();

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

    Typeface measures() {
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
}
