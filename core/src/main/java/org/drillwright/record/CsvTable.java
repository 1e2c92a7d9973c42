package org.drillwright.record;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.source.Span;

/**
 * Reads a table of comma or semicolon separated cells (RFC 4180, with either separator), each cell with its place. A cell in
 * quotes may hold line ends, unless each line of the table is said to stand for itself.
 */
public final class CsvTable {

    private final String text;
    private final char separator;
    private final boolean lineByLine;
    private final List<CsvLine> lines = new ArrayList<>();
    private final List<String> cells = new ArrayList<>();
    private final List<Span> spans = new ArrayList<>();
    private int at;
    private int lineStart;

    private CsvTable(String text, boolean lineByLine) {
        this.text = text;
        this.lineByLine = lineByLine;
        this.separator = separatorOf(text);
    }

    /** The lines of a text that aren't blank, the heading first. */
    public static List<CsvLine> lines(String text) {
        return new CsvTable(text, false).read();
    }

    /** The same where a line's end ends its cells too, so that a quote left open spoils no line but its own. */
    static List<CsvLine> lineByLine(String text) {
        return new CsvTable(text, true).read();
    }

    private List<CsvLine> read() {
        while (at < text.length()) {
            line();
        }
        return lines;
    }

    /** The separator of which the heading has more; a comma if neither stands there. */
    static char separatorOf(String text) {
        String heading =
                text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        long semicolons = heading.chars().filter(unit -> unit == ';').count();
        long commas = heading.chars().filter(unit -> unit == ',').count();
        return semicolons > commas ? ';' : ',';
    }

    private void line() {
        lineStart = at;
        cells.clear();
        spans.clear();
        do {
            cell();
        } while (passed(separator));
        Span span = new Span(lineStart, at);
        boolean ended = lineEnd();
        if (cells.stream().anyMatch(cell -> !cell.isBlank())) {
            lines.add(new CsvLine(cells, spans, span, ended));
        }
    }

    private void cell() {
        int start = at;
        String cell = at < text.length() && text.charAt(at) == '"' ? quoted() : "";
        int rest = at;
        while (at < text.length() && text.charAt(at) != separator && !isLineEnd(text.charAt(at))) {
            at++;
        }
        String whole = Normalizer.normalize(cell + text.substring(rest, at), Normalizer.Form.NFC);
        cells.add(SpreadsheetCell.unguarded(whole));
        spans.add(new Span(start, at));
    }

    private String quoted() {
        StringBuilder cell = new StringBuilder();
        at++;
        while (at < text.length() && !(lineByLine && isLineEnd(text.charAt(at)))) {
            if (text.charAt(at) != '"') {
                cell.append(text.charAt(at++));
            } else if (text.startsWith("\"\"", at)) {
                cell.append('"');
                at += 2;
            } else {
                at++;
                return cell.toString();
            }
        }
        return cell.toString();
    }

    private boolean passed(char wanted) {
        boolean here = at < text.length() && text.charAt(at) == wanted;
        at += here ? 1 : 0;
        return here;
    }

    private boolean lineEnd() {
        boolean carriage = passed('\r');
        return passed('\n') || carriage;
    }

    private static boolean isLineEnd(char unit) {
        return unit == '\n' || unit == '\r';
    }
}
