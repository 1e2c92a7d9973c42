package org.drillwright.source;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** A file's name and text; knows its lines. A line ends at LF, CR LF or a lone CR. */
public final class SourceFile {

    private final String name;
    private final String text;
    private final List<Integer> lineStarts = new ArrayList<>();

    /**
     * @param name as it is shown to people, with forward slashes
     * @param text the whole text
     */
    public SourceFile(String name, String text) {
        this.name = name;
        this.text = text;
        lineStarts.add(0);
        for (int at = 0; at < text.length(); at++) {
            char unit = text.charAt(at);
            boolean loneReturn = unit == '\r' && (at + 1 == text.length() || text.charAt(at + 1) != '\n');
            if (unit == '\n' || loneReturn) {
                lineStarts.add(at + 1);
            }
        }
    }

    public String name() {
        return name;
    }

    public String text() {
        return text;
    }

    public int lineCount() {
        return lineStarts.size();
    }

    /** Where people find an offset; one behind the end counts as the end. */
    public Position position(int offset) {
        int within = Math.min(offset, text.length());
        int found = Collections.binarySearch(lineStarts, within);
        int line = found >= 0 ? found : -found - 2;
        return new Position(line + 1, 1 + text.codePointCount(lineStarts.get(line), within));
    }

    /** The span of a line without its end, lines counted from 1. */
    public Span line(int number) {
        int start = lineStarts.get(number - 1);
        int end = number < lineStarts.size() ? lineStarts.get(number) : text.length();
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
