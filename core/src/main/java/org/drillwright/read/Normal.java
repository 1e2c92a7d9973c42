package org.drillwright.read;

import java.text.BreakIterator;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import org.drillwright.source.Span;
import org.drillwright.source.Written;

/** Brings a text to Unicode normal form C and keeps the places, which were taken before. */
final class Normal {

    private Normal() {}

    static Written form(Written written) {
        if (Normalizer.isNormalized(written.text(), Normalizer.Form.NFC)) {
            return written;
        }
        StringBuilder text = new StringBuilder();
        int[] starts = new int[written.text().length() * 3];
        int[] ends = new int[starts.length];
        BreakIterator clusters = BreakIterator.getCharacterInstance(Locale.ROOT);
        clusters.setText(written.text());
        int from = clusters.first();
        for (int to = clusters.next(); to != BreakIterator.DONE; from = to, to = clusters.next()) {
            Span place = written.span(from, to);
            String composed = Normalizer.normalize(written.text().substring(from, to), Normalizer.Form.NFC);
            Arrays.fill(starts, text.length(), text.length() + composed.length(), place.start());
            Arrays.fill(ends, text.length(), text.length() + composed.length(), place.end());
            text.append(composed);
        }
        int length = text.length();
        return new Written(text.toString(), Arrays.copyOf(starts, length), Arrays.copyOf(ends, length));
    }
}
