package org.drillwright.source;

import java.util.stream.IntStream;

/**
 * A text together with the place in the file of each of its UTF-16 units, so that a caret stands under the very word
 * however the text was written: plain, quoted, escaped, folded or literal.
 */
public final class Written {

    private final String text;
    private final int origin;
    private final Stretches places;

    /**
     * @param starts for each unit of the text, the offset in the file at which it begins
     * @param ends for each unit of the text, the offset in the file behind it
     */
    public Written(String text, int[] starts, int[] ends) {
        if (starts.length != text.length() || ends.length != text.length()) {
            throw new IllegalArgumentException("one place for each unit of the text");
        }
        this.text = text;
        this.origin = text.isEmpty() ? 0 : starts[0];
        this.places = text.isEmpty() ? Stretches.ONE : Stretches.of(starts, ends);
    }

    private Written(String text, int origin) {
        this.text = text;
        this.origin = origin;
        this.places = Stretches.ONE;
    }

    /** A text that stands in the file unit by unit, beginning at an offset. */
    public static Written asItStands(String text, int offset) {
        return new Written(text, offset);
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
            return Span.at(from < text.length() ? start(from) : end(text.length() - 1));
        }
        return new Span(start(from), Math.max(start(from), end(to - 1)));
    }

    /** The span in the file of a stretch of the text. */
    public Span span(Span within) {
        return span(within.start(), within.end());
    }

    /** The span in the file of the whole text. */
    public Span whole() {
        return span(0, text.length());
    }

    private int start(int unit) {
        return origin + places.start(unit);
    }

    private int end(int unit) {
        return origin + places.end(unit);
    }

    /** A part of this text, with its places. */
    public Written slice(int from, int to) {
        if (from == 0 && to == text.length()) {
            return this;
        }
        String part = text.substring(from, to);
        return places == Stretches.ONE
                ? new Written(part, origin + from)
                : new Written(
                        part,
                        IntStream.range(from, to).map(this::start).toArray(),
                        IntStream.range(from, to).map(this::end).toArray());
    }

    @Override
    public String toString() {
        return text;
    }
}
