package org.drillwright.print.pdf;

import java.io.IOException;
import java.util.List;
import org.drillwright.print.text.Joined;
import org.drillwright.print.text.Typeface;
import org.drillwright.print.text.Visual;

/** Shows a run of text, with the pen shifted between glyphs where the face kerns them. */
final class Kerned {

    /** Shifts are stated in thousandths of the type size, and backwards. */
    private static final double THOUSANDTHS = -1000;

    private Kerned() {}

    /**
     * @param joint what is written behind it, beyond its end; may be empty
     * @param rightToLeft whether the line is read so
     */
    static void show(String run, String joint, boolean rightToLeft, EmbeddedFace face, Operators page)
            throws IOException {
        String text = Joined.of(run + joint);
        if (Visual.isNeeded(text, rightToLeft)) {
            double beyond = rightToLeft ? face.measures().width(joint) : 0;
            placed(Visual.of(text, rightToLeft), beyond, face, page);
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

    /**
     * Glyphs in the order of reading, each with the pen moved to its place: so they are copied and read aloud aright.
     *
     * @param beyond how far it begins before its place
     */
    private static void placed(Visual visual, double beyond, EmbeddedFace face, Operators page) throws IOException {
        Typeface measures = face.measures();
        List<Integer> codePoints = visual.codePoints();
        int count = codePoints.size();
        int[] seen = new int[count];
        for (int at = 0; at < count; at++) {
            seen[visual.places().get(at)] = at;
        }
        double[] lefts = new double[count];
        double end = -beyond;
        for (int place = 0; place < count; place++) {
            boolean follows = place > 0 && seen[place] == seen[place - 1] + 1;
            double shift = follows ? measures.kerning(codePoints.get(seen[place] - 1), codePoints.get(seen[place])) : 0;
            lefts[seen[place]] = end + shift;
            end = lefts[seen[place]] + measures.advance(codePoints.get(seen[place]));
        }
        page.put('[');
        double pen = 0;
        for (int at = 0; at < count; at++) {
            if (lefts[at] != pen) {
                page.number((lefts[at] - pen) * THOUSANDTHS);
            }
            page.put('<').hex(face.glyph(codePoints.get(at))).put('>');
            pen = lefts[at] + measures.advance(codePoints.get(at));
        }
        page.put(']').op("TJ");
    }
}
