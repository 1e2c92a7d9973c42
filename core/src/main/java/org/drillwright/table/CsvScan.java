package org.drillwright.table;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.source.Span;

/** Divides a table's text into lines and cells. */
final class CsvScan {

    private final String text;
    private final char separator;
    private final boolean lineByLine;
    private final List<CsvLine> lines = new ArrayList<>();
    private final List<String> cells = new ArrayList<>();
    private final List<Span> spans = new ArrayList<>();
    private int at;
    private int lineStart;

    private CsvScan(String text, Separator separator, boolean lineByLine) {
        this.text = text;
        this.lineByLine = lineByLine;
        this.separator = separator.sign();
        this.at = separator.start();
    }

    /** The first lines that aren't blank. */
    static List<CsvLine> lines(String text, Separator separator, boolean lineByLine, int most) {
        CsvScan scan = new CsvScan(text, separator, lineByLine);
        while (scan.at < text.length() && scan.lines.size() < most) {
            scan.line();
        }
        return scan.lines;
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
        String whole = SpreadsheetCell.unguarded(cell + text.substring(rest, at));
        boolean plain = whole.chars().allMatch(unit -> unit < 0x80);
        cells.add(plain ? whole : Unseen.without(Normalizer.normalize(whole, Normalizer.Form.NFC)));
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
