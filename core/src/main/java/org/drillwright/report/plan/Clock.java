package org.drillwright.report.plan;

import java.time.Duration;
import java.util.Locale;

/** Times of a class as they are shown. */
public final class Clock {

    private Clock() {}

    /** Minutes and seconds, such as {@code 17:50}; minutes may be more than 60. */
    public static String of(Duration time) {
        Duration size = time.abs();
        return (time.isNegative() ? "-" : "") + size.toMinutes() + ":"
                + String.format(Locale.ROOT, "%02d", size.toSecondsPart());
    }
}
