package org.drillwright.plan.course;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalInt;

/**
 * A drill of a course.
 *
 * @param needs numbers of the drills of the course that come before it
 * @param value how much it is wanted early, 1 or more
 * @param every the most weeks between two workings, if it is a fundamental
 * @param workings classes before the exam in which it is to be worked; 0 if the exam doesn't ask it
 * @param past the days on which it was worked before the open classes, in order
 * @param known whether it needs no introduction, be it on record or not
 * @param done on how many days each person has worked it, {@link #ENOUGH} for whoever knows it
 */
public record Asked(
        String id,
        List<Integer> needs,
        int value,
        OptionalInt every,
        int workings,
        List<LocalDate> past,
        boolean known,
        List<Integer> done) {

    /** Days of work after which a drill may be signed off; common practice, no source. */
    public static final int ENOUGH = 3;

    public Asked {
        needs = List.copyOf(needs);
        past = List.copyOf(past);
        done = List.copyOf(done);
    }

    public boolean isIntroduced() {
        return known || !past.isEmpty();
    }
}
