package org.drillwright.table;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands between the cells of a table.
 *
 * @param start where the table begins: behind a first line such as {@code sep=;}, which some spreadsheets write
 */
record Separator(char sign, int start) {

    /** Lines that are looked at. */
    private static final int LOOKED_AT = 20;

    /** The first of them is taken where nothing speaks for another. */
    private static final String SIGNS = ",;\t|";

    private static final Pattern SAID =
            Pattern.compile("\"?sep=([,;\\t|])\"?(\\r\\n?|\\n|$)", Pattern.CASE_INSENSITIVE);

    /**
     * The one that a first line names; else the one by which the most of the first lines have equally many cells; where
     * nothing but one of them stands, that one.
     */
    static Separator of(String text, boolean lineByLine) {
        Matcher said = SAID.matcher(text);
        if (said.lookingAt()) {
            return new Separator(said.group(1).charAt(0), said.end());
        }
        char best = SIGNS.charAt(0);
        Fit fit = new Fit(0, 0);
        for (int at = 0; at < SIGNS.length(); at++) {
            char sign = SIGNS.charAt(at);
            List<CsvLine> lines = CsvScan.lines(text, new Separator(sign, 0), lineByLine, LOOKED_AT);
            if (lines.isEmpty()) {
                return new Separator(sign, 0);
            }
            Fit other = Fit.of(lines);
            if (other.isBetterThan(fit)) {
                best = sign;
                fit = other;
            }
        }
        return new Separator(best, 0);
    }

    /** How many lines have equally many cells, two or more, and how many cells these are. */
    private record Fit(int lines, int cells) {

        static Fit of(List<CsvLine> lines) {
            Map<Integer, Integer> counts = new HashMap<>();
            lines.forEach(line -> counts.merge(line.cells().size(), 1, Integer::sum));
            Fit best = new Fit(0, 0);
            for (Map.Entry<Integer, Integer> count : counts.entrySet()) {
                Fit other = new Fit(count.getValue(), count.getKey());
                best = other.cells() > 1 && other.isBetterThan(best) ? other : best;
            }
            return best;
        }

        boolean isBetterThan(Fit other) {
            return lines > other.lines || (lines == other.lines && cells > other.cells);
        }
    }
}
