package org.drillwright.print.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Where to end the lines of a paragraph so that all of it looks best, not line after line: as few lines as possible,
 * then no line that ends with a word of one letter, then the evenest right edge. After D. E. Knuth and M. F. Plass,
 * Breaking Paragraphs into Lines, Software: Practice and Experience 11 (1981), for lines that do not stretch.
 */
final class TotalFit {

    /** A lonely letter costs more than a line does: it is avoided even if the paragraph grows. */
    private static final double LONELY = 1e6;

    private static final double LINE = 1e4;
    private static final double HYPHEN = 50;
    private static final double SLACK = 100;

    /** A last line this short, as a share of the measure, looks like a scrap. */
    private static final double SCRAP = 0.2;

    private static final double SCRAPPY = 5;

    /** Sums of widths are off by less than this. */
    private static final double ROUNDING = 1e-9;

    private TotalFit() {}

    /** For each line the index behind its last chunk. A chunk wider than the measure stands alone on its line. */
    static List<Integer> ends(List<Chunk> chunks, double measure) {
        int count = chunks.size();
        double[] onward = new double[count];
        for (int at = 0; at < count; at++) {
            onward[at] = chunks.get(at).onward();
        }
        double[] cost = new double[count + 1];
        int[] from = new int[count + 1];
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
        cost[0] = 0;
        for (int end = 1; end <= count; end++) {
            Chunk last = chunks.get(end - 1);
            double width = last.atEnd();
            for (int start = end - 1; start >= 0; start--) {
                if (start < end - 1) {
                    width += onward[start];
                }
                if (width > measure + ROUNDING && start < end - 1) {
                    break;
                }
                double total = cost[start] + line(last, end == count, width / measure);
                if (total < cost[end]) {
                    cost[end] = total;
                    from[end] = start;
                }
            }
        }
        return backwards(from);
    }

    private static double line(Chunk last, boolean closing, double filled) {
        if (closing) {
            return LINE + (filled < SCRAP ? SCRAPPY : 0);
        }
        double slack = Math.max(0, 1 - filled);
        return LINE + SLACK * slack * slack + (last.lonely() ? LONELY : 0) + (last.hyphen() > 0 ? HYPHEN : 0);
    }

    private static List<Integer> backwards(int[] from) {
        List<Integer> ends = new ArrayList<>();
        for (int end = from.length - 1; end > 0; end = from[end]) {
            ends.add(end);
        }
        Collections.reverse(ends);
        return ends;
    }
}
