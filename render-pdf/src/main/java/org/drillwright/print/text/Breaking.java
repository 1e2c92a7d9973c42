package org.drillwright.print.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;

/**
 * Where to end the lines of a paragraph. Each way answers for each line with the index behind its last chunk; a chunk
 * wider than the measure stands alone on its line.
 */
final class Breaking {

    /** Breaks whose longest lines differ by less, in ems, are as good as each other: then the pauses decide. */
    private static final double ALIKE = 2;

    /** Sums of widths are off by less than this. */
    private static final double ROUNDING = 1e-9;

    private final List<Chunk> chunks;
    private final int count;
    private final double[] onward;

    private Breaking(List<Chunk> chunks) {
        this.chunks = chunks;
        this.count = chunks.size();
        this.onward = chunks.stream().mapToDouble(Chunk::onward).toArray();
    }

    /** Running text: each line takes what it holds, and no word stands on the last line by itself. */
    static List<Integer> running(List<Chunk> chunks, double measure) {
        return new Breaking(chunks).running(measure);
    }

    /**
     * Words to be taken in at a glance: the fewest lines that part nothing that is read as one; of such ways the one
     * whose longest line is shortest, and among those nearly as short the one that most often ends where one pauses.
     */
    static List<Integer> balanced(List<Chunk> chunks, double measure) {
        return new Breaking(chunks).balanced(measure);
    }

    private List<Integer> running(double measure) {
        List<Integer> ends = new ArrayList<>();
        int start = 0;
        while (start < count) {
            int full = start + 1;
            while (full < count && width(start, full + 1) <= measure + ROUNDING) {
                full++;
            }
            int end = full;
            while (end < count && end > start && parts(end)) {
                end--;
            }
            ends.add(end > start ? end : full);
            start = ends.get(ends.size() - 1);
        }
        joinLast(ends, measure);
        return ends;
    }

    private void joinLast(List<Integer> ends, double measure) {
        int lines = ends.size();
        if (lines < 2 || count - ends.get(lines - 2) > 1) {
            return;
        }
        int before = lines > 2 ? ends.get(lines - 3) : 0;
        for (int end = ends.get(lines - 2) - 1; end > before; end--) {
            if (width(end, count) > measure + ROUNDING) {
                return;
            }
            boolean leavesOne = end - before == 1;
            if (!parts(end) && !leavesOne) {
                ends.set(lines - 2, end);
                return;
            }
        }
    }

    private List<Integer> balanced(double measure) {
        if (count == 0 || width(0, count) <= measure + ROUNDING) {
            return count == 0 ? List.of() : List.of(count);
        }
        Fewest fewest = fewest(measure);
        double shortest = shortest(measure, fewest);
        return paused(Math.min(measure, shortest + ALIKE), fewest);
    }

    /** @param faults how many of the ends part what is read as one */
    private record Fewest(int lines, int faults) {}

    private Fewest fewest(double measure) {
        int[] faults = new int[count + 1];
        int[] lines = new int[count + 1];
        Arrays.fill(faults, Integer.MAX_VALUE);
        faults[0] = 0;
        for (int end = 1; end <= count; end++) {
            for (int start = end - 1; start >= 0 && fits(start, end, measure); start--) {
                int wrong = faults[start] + fault(start, end);
                if (wrong < faults[end] || (wrong == faults[end] && lines[start] + 1 < lines[end])) {
                    faults[end] = wrong;
                    lines[end] = lines[start] + 1;
                }
            }
        }
        return new Fewest(lines[count], faults[count]);
    }

    /** How wide the longest line is at least. */
    private double shortest(double measure, Fewest fewest) {
        double[][] longest = table(fewest.faults(), Double.POSITIVE_INFINITY);
        longest[0][0] = 0;
        for (int line = 1; line <= fewest.lines(); line++) {
            double[][] next = table(fewest.faults(), Double.POSITIVE_INFINITY);
            for (int end = 1; end <= count; end++) {
                for (int start = end - 1; start >= 0 && fits(start, end, measure); start--) {
                    double width = width(start, end);
                    int wrong = fault(start, end);
                    for (int faults = wrong; faults <= fewest.faults(); faults++) {
                        double whole = Math.max(longest[faults - wrong][start], width);
                        next[faults][end] = Math.min(next[faults][end], whole);
                    }
                }
            }
            longest = next;
        }
        return longest[fewest.faults()][count];
    }

    /** A way to a place, with what is good about it: pauses first, then a short longest line. */
    private record Way(int faults, int pauses, double longest, List<Integer> ends) {

        boolean isBetterThan(Way other) {
            return pauses != other.pauses ? pauses > other.pauses : longest < other.longest - ROUNDING;
        }
    }

    private List<Integer> paused(double measure, Fewest fewest) {
        List<List<Way>> ways = new ArrayList<>(Collections.nCopies(count + 1, List.of()));
        ways.set(0, List.of(new Way(0, 0, 0, List.of())));
        for (int line = 1; line <= fewest.lines(); line++) {
            List<List<Way>> next = new ArrayList<>(Collections.nCopies(count + 1, List.of()));
            for (int end = 1; end <= count; end++) {
                List<Way> here = new ArrayList<>();
                for (int start = end - 1; start >= 0 && fits(start, end, measure); start--) {
                    for (Way way : ways.get(start)) {
                        Way longer = onward(way, start, end);
                        if (longer.faults() <= fewest.faults()) {
                            take(longer, here);
                        }
                    }
                }
                next.set(end, here);
            }
            ways = next;
        }
        return ways.get(count).stream()
                .filter(way -> way.faults() == fewest.faults())
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("a paragraph has as many lines as were counted"))
                .ends();
    }

    private Way onward(Way way, int start, int end) {
        boolean pauses = end < count && chunks.get(end - 1).manner() == Chunk.Manner.PAUSING;
        List<Integer> ends = new ArrayList<>(way.ends());
        ends.add(end);
        return new Way(
                way.faults() + fault(start, end),
                way.pauses() + (pauses ? 1 : 0),
                Math.max(way.longest(), width(start, end)),
                ends);
    }

    /** Keeps the best way for each number of faults. */
    private static void take(Way way, List<Way> into) {
        for (int at = 0; at < into.size(); at++) {
            if (into.get(at).faults() == way.faults()) {
                if (way.isBetterThan(into.get(at))) {
                    into.set(at, way);
                }
                return;
            }
        }
        into.add(way);
    }

    private double[][] table(int faults, double filled) {
        double[][] table = new double[faults + 1][count + 1];
        for (double[] row : table) {
            Arrays.fill(row, filled);
        }
        return table;
    }

    private boolean fits(int start, int end, double measure) {
        return end == start + 1 || width(start, end) <= measure + ROUNDING;
    }

    private double width(int start, int end) {
        double width = chunks.get(end - 1).atEnd();
        for (int at = start; at < end - 1; at++) {
            width += onward[at];
        }
        return width;
    }

    private boolean parts(int end) {
        return chunks.get(end - 1).manner() == Chunk.Manner.PARTING;
    }

    private int fault(int start, int end) {
        boolean scrap = end == count
                && start == count - 1
                && start > 0
                && chunks.get(start).isShort();
        return scrap || (end < count && parts(end)) ? 1 : 0;
    }
}
