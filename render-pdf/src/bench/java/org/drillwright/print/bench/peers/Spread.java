package org.drillwright.print.bench.peers;

import java.util.Locale;
import java.util.stream.DoubleStream;

/** The middle of what was measured, the least and the most. */
record Spread(double median, double least, double most) {

    static Spread of(DoubleStream measured) {
        double[] sorted = measured.sorted().toArray();
        return new Spread(sorted[sorted.length / 2], sorted[0], sorted[sorted.length - 1]);
    }

    /** As a ratio. */
    String times() {
        return String.format(Locale.ROOT, "%.2f (%.2f–%.2f)", median, least, most);
    }

    /** As milliseconds, shared by so many. */
    String each(int of) {
        String form = median / of < 10 ? "%.2f (%.2f–%.2f)" : "%.0f (%.0f–%.0f)";
        return String.format(Locale.ROOT, form, median / of, least / of, most / of);
    }
}
