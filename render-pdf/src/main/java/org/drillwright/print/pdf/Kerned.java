package org.drillwright.print.pdf;

import java.io.IOException;
import org.drillwright.print.text.Typeface;

/** Shows a run of text, with the pen shifted between glyphs where the face kerns them. */
final class Kerned {

    /** Shifts are stated in thousandths of the type size, and backwards. */
    private static final double THOUSANDTHS = -1000;

    private Kerned() {}

    static void show(String text, EmbeddedFace face, Operators page) throws IOException {
        Typeface measures = face.measures();
        page.put('[').put('<');
        int before = -1;
        for (int at = 0; at < text.length(); ) {
            int codePoint = text.codePointAt(at);
            double shift = before < 0 ? 0 : measures.kerning(before, codePoint);
            if (shift != 0) {
                page.put('>').number(shift * THOUSANDTHS).put('<');
            }
            page.hex(face.glyph(codePoint));
            before = codePoint;
            at += Character.charCount(codePoint);
        }
        page.put('>').put(']').op("TJ");
    }
}
