package org.drillwright.table;

import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Writes cells so that no spreadsheet runs one as a formula: a cell that begins like one gets an apostrophe before it,
 * which reading takes away again. The dangerous beginnings are those named by OWASP, "CSV injection".
 */
public final class SpreadsheetCell {

    private static final Pattern RUNS = Pattern.compile("'*[=+\\-@\\t\\r\\n\uFF1D\uFF0B\uFF0D\uFF20]");
    private static final Pattern NEEDS_QUOTES = Pattern.compile("[,;|\"\\r\\n\\t]");

    private SpreadsheetCell() {}

    /** One line of a table with commas, without its end. */
    public static String line(List<String> cells) {
        return line(cells, ',');
    }

    /** One line of a table, without its end. */
    public static String line(List<String> cells, char separator) {
        return cells.stream().map(SpreadsheetCell::written).collect(Collectors.joining(String.valueOf(separator)));
    }

    static String written(String text) {
        String guarded = RUNS.matcher(text).lookingAt() ? "'" + text : text;
        boolean quotes = NEEDS_QUOTES.matcher(guarded).find() || !guarded.equals(guarded.strip());
        return quotes ? '"' + guarded.replace("\"", "\"\"") + '"' : guarded;
    }

    static String unguarded(String cell) {
        return cell.startsWith("'") && RUNS.matcher(cell).lookingAt() ? cell.substring(1) : cell;
    }
}
