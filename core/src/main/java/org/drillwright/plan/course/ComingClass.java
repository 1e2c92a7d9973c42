package org.drillwright.plan.course;

import java.time.LocalDate;
import java.util.List;

/**
 * A class of a course that is still to come.
 *
 * @param number among all classes of the term, from 0
 * @param minutes that are left for drills
 * @param places drills that may be new
 * @param chances how likely each person is to come
 */
public record ComingClass(int number, LocalDate date, int minutes, int places, List<Double> chances) {

    public ComingClass {
        chances = List.copyOf(chances);
    }

    public double expected() {
        return chances.stream().mapToDouble(Double::doubleValue).sum();
    }
}
