package org.drillwright.print.pdf;

import java.io.IOException;
import org.drillwright.print.text.Typeface;
import org.drillwright.print.text.Visual;

/** Shows a run of text, with the pen shifted between glyphs where the face kerns them. */
final class Kerned {

    /** Shifts are stated in thousandths of the type size, and backwards. */
    private static final double THOUSANDTHS = -1000;

    private Kerned() {}

    /** @param rightToLeft whether the line is read so */
    static void show(String text, boolean rightToLeft, EmbeddedFace face, Operators page) throws IOException {
        if (Visual.isNeeded(text, rightToLeft)) {
            placed(Visual.of(text, rightToLeft), face, page);
            return;
        }
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

    /** Glyphs in the order of reading, each with the pen moved to its place: so they are copied and read aloud aright. */
    private static void placed(Visual visual, EmbeddedFace face, Operators page) throws IOException {
        int count = visual.codePoints().size();
        double[] lefts = new double[count + 1];
        for (int at = 0; at < count; at++) {
            lefts[visual.places().get(at) + 1] =
                    face.measures().advance(visual.codePoints().get(at));
        }
        for (int place = 0; place < count; place++) {
            lefts[place + 1] += lefts[place];
        }
        page.put('[');
        double pen = 0;
        for (int at = 0; at < count; at++) {
            double left = lefts[visual.places().get(at)];
            if (left != pen) {
                page.number((left - pen) * THOUSANDTHS);
            }
            page.put('<').hex(face.glyph(visual.codePoints().get(at))).put('>');
            pen = lefts[visual.places().get(at) + 1];
        }
        page.put(']').op("TJ");
    }
}
