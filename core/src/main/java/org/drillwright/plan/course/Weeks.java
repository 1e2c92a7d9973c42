package org.drillwright.plan.course;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;

/** Gaps between days, in weeks. */
final class Weeks {

    static final int DAYS = 7;

    private Weeks() {}

    /** To the nearest week, at least 1 if the days differ; a class that is moved by a day or two counts as in its week. */
    static int between(LocalDate from, LocalDate to) {
        long days = ChronoUnit.DAYS.between(from, to);
        return days <= 0 ? 0 : (int) Math.max(1, (days + DAYS / 2) / DAYS);
    }
}
