package org.drillwright.report.calendar;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/**
 * What a calendar is told of a class, or of an exam, by one published plan.
 *
 * @param begins absent for a whole day
 * @param described drills, no names
 */
record CalendarEvent(
        LocalDate date,
        Optional<LocalTime> begins,
        int minutes,
        String zone,
        String place,
        String summary,
        String described) {}
