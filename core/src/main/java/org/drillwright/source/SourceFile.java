package org.drillwright.source;

import java.util.Arrays;

/** A file's name and text; knows its lines. A line ends at LF, CR LF or a lone CR. */
public final class SourceFile {

    private final String name;
    private final String text;
    private final int[] lineStarts;

    /**
     * @param name as it is shown to people, with forward slashes
     * @param text the whole text
     */
    public SourceFile(String name, String text) {
        this.name = name;
        this.text = text;
        this.lineStarts = lineStarts(text);
    }

    private static int[] lineStarts(String text) {
        int[] starts = new int[64];
        int lines = 1;
        for (int at = 0; at < text.length(); at++) {
            char unit = text.charAt(at);
            boolean loneReturn = unit == '\r' && (at + 1 == text.length() || text.charAt(at + 1) != '\n');
            if (unit == '\n' || loneReturn) {
                starts = lines == starts.length ? Arrays.copyOf(starts, lines * 2) : starts;
                starts[lines++] = at + 1;
            }
        }
        return Arrays.copyOf(starts, lines);
    }

    public String name() {
        return name;
    }

    public String text() {
        return text;
    }

    public int lineCount() {
        return lineStarts.length;
    }

    /** Where people find an offset; one behind the end counts as the end. */
    public LineColumn position(int offset) {
        int within = Math.min(offset, text.length());
        int found = Arrays.binarySearch(lineStarts, within);
        int line = found >= 0 ? found : -found - 2;
        return new LineColumn(line + 1, 1 + text.codePointCount(lineStarts[line], within));
    }

    /** The span of a line without its end, lines counted from 1. */
    public Span line(int number) {
        int start = lineStarts[number - 1];
        int end = number < lineStarts.length ? lineStarts[number] : text.length();
        while (end > start && (text.charAt(end - 1) == '\n' || text.charAt(end - 1) == '\r')) {
            end--;
        }
        return new Span(start, end);
    }

    public String slice(Span span) {
        return text.substring(span.start(), Math.min(span.end(), text.length()));
    }

    @Override
    public String toString() {
        return name;
    }
}
