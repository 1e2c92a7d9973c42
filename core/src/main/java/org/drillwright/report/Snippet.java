package org.drillwright.report;

import org.drillwright.source.Finding;
import org.drillwright.source.LineColumn;
import org.drillwright.source.Span;

/**
 * A line of a file and the mark under the words that are meant.
 *
 * @param line the line's text, shortened on both sides if it is long
 * @param indent what stands before the mark, as wide as the words before those that are meant
 * @param mark carets, at least one
 */
record Snippet(int number, String line, String indent, String mark) {

    private static final int WIDTH = 110;
    private static final int BEFORE = 60;

    static Snippet of(Finding finding) {
        LineColumn position = finding.position();
        Span line = finding.file().line(position.line());
        String text = finding.file().text();
        int start = Math.min(finding.span().start(), line.end());
        int end = Math.max(start, Math.min(finding.span().end(), line.end()));
        int from = shift(text, line.start(), Math.max(line.start(), line.length() > WIDTH ? start - BEFORE : 0));
        int to = line.end() - from > WIDTH ? shift(text, from, from + WIDTH) : line.end();
        String lead = from > line.start() ? "…" : "";
        String before = DisplayWidth.shown(lead + text.substring(from, start));
        String meant = DisplayWidth.shown(text.substring(start, Math.min(end, Math.max(start, to))));
        String shown = DisplayWidth.shown(lead + text.substring(from, to) + (to < line.end() ? "…" : ""));
        return new Snippet(position.line(), shown, blank(before), "^".repeat(Math.max(1, DisplayWidth.of(meant))));
    }

    /** The place, moved off the middle of a surrogate pair. */
    private static int shift(String text, int least, int at) {
        boolean inside = at > least && at < text.length() && Character.isLowSurrogate(text.charAt(at));
        return inside ? at - 1 : at;
    }

    private static String blank(String text) {
        StringBuilder blank = new StringBuilder();
        text.codePoints().forEach(point -> blank.append(point == '\t' ? "\t" : " ".repeat(DisplayWidth.of(point))));
        return blank.toString();
    }
}
