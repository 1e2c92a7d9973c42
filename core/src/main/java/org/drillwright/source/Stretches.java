package org.drillwright.source;

import java.util.Arrays;

/**
 * The places of a text's units, kept as stretches in which one unit follows the other in the file as it does in the text.
 * A text that was written as it reads is one stretch, however long it is.
 */
final class Stretches {

    /** One stretch from the text's beginning. */
    static final Stretches ONE = new Stretches(new int[] {0, 0, 1});

    private static final int FIGURES = 3;

    /** For each stretch its first unit, and where that begins and ends, counted from where the text begins. */
    private final int[] runs;

    private Stretches(int[] runs) {
        this.runs = runs;
    }

    /** @param starts at least one */
    static Stretches of(int[] starts, int[] ends) {
        int[] runs = new int[FIGURES];
        int filled = 0;
        for (int at = 0; at < starts.length; at++) {
            if (at > 0 && follows(starts, ends, at)) {
                continue;
            }
            if (filled == runs.length) {
                runs = Arrays.copyOf(runs, runs.length * 2);
            }
            runs[filled] = at;
            runs[filled + 1] = starts[at] - starts[0];
            runs[filled + 2] = ends[at] - starts[0];
            filled += FIGURES;
        }
        boolean one = filled == FIGURES && runs[2] == 1;
        return one ? ONE : new Stretches(Arrays.copyOf(runs, filled));
    }

    private static boolean follows(int[] starts, int[] ends, int at) {
        return starts[at] == starts[at - 1] + 1 && ends[at - 1] == starts[at] && ends[at] == starts[at] + 1;
    }

    int count() {
        return runs.length / FIGURES;
    }

    int start(int unit) {
        int run = run(unit);
        return runs[run + 1] + unit - runs[run];
    }

    int end(int unit) {
        int run = run(unit);
        return runs[run] == unit ? runs[run + 2] : start(unit) + 1;
    }

    /** Where the stretch of a unit is told of. */
    private int run(int unit) {
        int low = 0;
        int high = count();
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (runs[middle * FIGURES] <= unit) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low * FIGURES;
    }
}
