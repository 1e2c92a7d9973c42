package org.drillwright.read;

import java.text.Normalizer;
import java.util.Arrays;
import org.drillwright.source.Span;
import org.drillwright.source.Written;

/** Brings a text to Unicode normal form C and keeps the places, which were taken before. */
final class Normal {

    private Normal() {}

    static Written form(Written written) {
        if (isPlain(written.text()) || Normalizer.isNormalized(written.text(), Normalizer.Form.NFC)) {
            return written;
        }
        StringBuilder text = new StringBuilder();
        int[] starts = new int[written.text().length() * 3];
        int[] ends = new int[starts.length];
        int to;
        for (int from = 0; from < written.text().length(); from = to) {
            to = nextBoundary(written.text(), from);
            Span place = written.span(from, to);
            String composed = Normalizer.normalize(written.text().substring(from, to), Normalizer.Form.NFC);
            Arrays.fill(starts, text.length(), text.length() + composed.length(), place.start());
            Arrays.fill(ends, text.length(), text.length() + composed.length(), place.end());
            text.append(composed);
        }
        int length = text.length();
        return new Written(text.toString(), Arrays.copyOf(starts, length), Arrays.copyOf(ends, length));
    }

    /** Whether all is below the first character that normal form C can change (Unicode Annex 15: U+0300). */
    private static boolean isPlain(String text) {
        for (int at = 0; at < text.length(); at++) {
            if (text.charAt(at) >= 0x300) {
                return false;
            }
        }
        return true;
    }

    /**
     * The next place at which the text can be parted without changing its normal form: before a character that neither
     * joins the one before nor changes places with it. Those that do are marks, and vowels and finals of Hangul (Unicode
     * Annex 15, and section 3.12 of the standard).
     */
    private static int nextBoundary(String text, int from) {
        int at = from + Character.charCount(text.codePointAt(from));
        while (at < text.length() && joins(text.codePointAt(at))) {
            at += Character.charCount(text.codePointAt(at));
        }
        return at;
    }

    private static boolean joins(int point) {
        int type = Character.getType(point);
        boolean mark = type == Character.NON_SPACING_MARK
                || type == Character.COMBINING_SPACING_MARK
                || type == Character.ENCLOSING_MARK;
        return mark || (point >= 0x1160 && point <= 0x11FF);
    }
}
