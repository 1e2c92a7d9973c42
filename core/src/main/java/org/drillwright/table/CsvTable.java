package org.drillwright.table;

import java.util.List;

/**
 * A table of separated cells (RFC 4180, with the separator that it uses), each cell with its place.
 *
 * @param separator what stands between its cells
 * @param lines those that aren't blank, the heading first
 */
public record CsvTable(char separator, List<CsvLine> lines) {

    public CsvTable {
        lines = List.copyOf(lines);
    }

    /** Reads a text in which a cell between quotes may hold line ends. */
    public static CsvTable of(String text) {
        return read(text, false);
    }

    /** The same where a line's end ends its cells too, so that a quote left open spoils no line but its own. */
    public static CsvTable lineByLine(String text) {
        return read(text, true);
    }

    private static CsvTable read(String text, boolean lineByLine) {
        Separator separator = Separator.of(text, lineByLine);
        return new CsvTable(separator.sign(), CsvScan.lines(text, separator, lineByLine, Integer.MAX_VALUE));
    }

    /** Where the table's heading stands; nowhere special if it has none. */
    public CsvLine heading() {
        return lines.get(0);
    }

    /** Whether not even a heading stands there. */
    public boolean isEmpty() {
        return lines.isEmpty();
    }

    /** The lines below the heading. */
    public List<CsvLine> body() {
        return lines.isEmpty() ? lines : lines.subList(1, lines.size());
    }
}
