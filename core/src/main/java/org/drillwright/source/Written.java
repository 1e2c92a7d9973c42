package org.drillwright.source;

import java.util.Arrays;

/**
 * A text together with the place in the file of each of its UTF-16 units, so that a caret stands under the very word
 * however the text was written: plain, quoted, escaped, folded or literal.
 */
public final class Written {

    private final String text;
    private final int[] starts;
    private final int[] ends;

    /**
     * @param starts for each unit of the text, the offset in the file at which it begins
     * @param ends for each unit of the text, the offset in the file behind it
     */
    public Written(String text, int[] starts, int[] ends) {
        if (starts.length != text.length() || ends.length != text.length()) {
            throw new IllegalArgumentException("one place for each unit of the text");
        }
        this.text = text;
        this.starts = starts.clone();
        this.ends = ends.clone();
    }

    /** A text that stands in the file unit by unit, beginning at an offset. */
    public static Written asItStands(String text, int offset) {
        int[] starts = new int[text.length()];
        int[] ends = new int[text.length()];
        Arrays.setAll(starts, at -> offset + at);
        Arrays.setAll(ends, at -> offset + at + 1);
        return new Written(text, starts, ends);
    }

    public String text() {
        return text;
    }

    /** The span in the file of a stretch of the text; of the whole text's beginning if the stretch is empty. */
    public Span span(int from, int to) {
        if (text.isEmpty()) {
            return Span.at(0);
        }
        if (from >= to) {
            return Span.at(from < text.length() ? starts[from] : ends[text.length() - 1]);
        }
        return new Span(starts[from], Math.max(starts[from], ends[to - 1]));
    }

    /** The span in the file of a stretch of the text. */
    public Span span(Span within) {
        return span(within.start(), within.end());
    }

    /** The span in the file of the whole text. */
    public Span whole() {
        return span(0, text.length());
    }

    /** A stretch of this text, with its places. */
    public Written slice(int from, int to) {
        return new Written(
                text.substring(from, to), Arrays.copyOfRange(starts, from, to), Arrays.copyOfRange(ends, from, to));
    }

    @Override
    public String toString() {
        return text;
    }
}
