package org.drillwright.source;

/**
 * A stretch of a file's text, as UTF-16 offsets from its beginning.
 *
 * @param start offset of the first unit, 0 or more
 * @param end offset behind the last unit, not before {@code start}
 */
public record Span(int start, int end) {

    public Span {
        if (start < 0 || end < start) {
            throw new IllegalArgumentException("a span from " + start + " to " + end);
        }
    }

    /** The empty span at one offset. */
    public static Span at(int offset) {
        return new Span(offset, offset);
    }

    public int length() {
        return end - start;
    }

    /** The smallest span that holds this one and the other. */
    public Span to(Span other) {
        return new Span(Math.min(start, other.start), Math.max(end, other.end));
    }
}
