package org.drillwright.print.pdf;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.text.Typeface;

/** Cuts a run where the pen must be shifted between two glyphs. */
final class Kerned {

    /** Shifts are stated in thousandths of the type size, and backwards. */
    private static final double THOUSANDTHS = -1000;

    private Kerned() {}

    /** Strings and shifts by turns, as the operator for text with positions takes them. */
    static Object[] pieces(String text, Typeface face) {
        List<Object> pieces = new ArrayList<>();
        StringBuilder piece = new StringBuilder();
        int before = -1;
        for (int codePoint : text.codePoints().toArray()) {
            double shift = before < 0 ? 0 : face.kerning(before, codePoint);
            if (shift != 0) {
                pieces.add(piece.toString());
                pieces.add((float) (shift * THOUSANDTHS));
                piece.setLength(0);
            }
            piece.appendCodePoint(codePoint);
            before = codePoint;
        }
        pieces.add(piece.toString());
        return pieces.toArray();
    }
}
