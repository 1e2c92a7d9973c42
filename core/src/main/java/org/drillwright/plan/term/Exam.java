package org.drillwright.plan.term;

import java.time.LocalDate;
import java.util.List;

/**
 * An examination.
 *
 * @param drills ids of those that are asked
 * @param workings classes before that day in which each of them is worked, the one in which it is new among them
 */
public record Exam(LocalDate date, List<String> drills, int workings) {

    /** Common practice, no source. */
    public static final int WORKINGS = 3;

    public Exam {
        drills = List.copyOf(drills);
    }
}
