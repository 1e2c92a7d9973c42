package org.drillwright.print.text;

import java.text.Bidi;
import java.util.Arrays;
import java.util.List;

/**
 * A run as it stands on paper: letters from right to left in their order, numbers and Latin words among them from left to
 * right (Unicode Standard Annex 9), brackets turned round.
 *
 * @param codePoints in the order of reading
 * @param places for each the number of its place from the left
 */
public record Visual(List<Integer> codePoints, List<Integer> places) {

    public Visual {
        codePoints = List.copyOf(codePoints);
        places = List.copyOf(places);
    }

    /** Marks without a glyph: what is before it goes with Latin letters, or as it would without it. */
    private static final char LEFT_TO_RIGHT = '\u200E';

    private static final char NOTHING = '\u200B';

    private static final String BRACKETS = "()[]{}<>«»‹›";

    /** Nothing is turned in most runs: whether this one has to be looked at at all. */
    public static boolean isNeeded(String text, boolean rightToLeft) {
        return rightToLeft || text.codePoints().anyMatch(GlyphCoverage::isRightToLeft);
    }

    /** @param rightToLeft whether the line that it is part of is read from right to left */
    public static Visual of(String text, boolean rightToLeft) {
        int[] codePoints = text.codePoints().toArray();
        Bidi bidi = new Bidi(sealed(text), rightToLeft ? Bidi.DIRECTION_RIGHT_TO_LEFT : Bidi.DIRECTION_LEFT_TO_RIGHT);
        int end = text.stripTrailing().length();
        byte[] levels = new byte[codePoints.length];
        Integer[] order = new Integer[codePoints.length];
        int unit = 0;
        for (int at = 0; at < codePoints.length; at++) {
            levels[at] = (byte) bidi.getLevelAt(unit < end ? unit : unit + 1);
            order[at] = at;
            unit += Character.charCount(codePoints[at]);
            if (levels[at] % 2 == 1) {
                codePoints[at] = turned(codePoints[at]);
            }
        }
        Bidi.reorderVisually(levels, 0, order, 0, order.length);
        int[] places = new int[order.length];
        for (int place = 0; place < order.length; place++) {
            places[order[place]] = place;
        }
        return new Visual(listed(codePoints), listed(places));
    }

    private static List<Integer> listed(int[] numbers) {
        return Arrays.stream(numbers).boxed().toList();
    }

    /** Latin words keep the full stop behind them. */
    private static String sealed(String text) {
        int end = text.stripTrailing().length();
        boolean latin = text.codePoints().noneMatch(GlyphCoverage::isRightToLeft);
        return text.substring(0, end) + (latin ? LEFT_TO_RIGHT : NOTHING) + text.substring(end);
    }

    private static int turned(int codePoint) {
        int at = BRACKETS.indexOf(codePoint);
        return at < 0 ? codePoint : BRACKETS.charAt(at ^ 1);
    }
}
