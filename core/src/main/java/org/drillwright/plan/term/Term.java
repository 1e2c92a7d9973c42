package org.drillwright.plan.term;

import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What an instructor asks for a term.
 *
 * @param title what it is called
 * @param place where the classes are; may be empty
 * @param zone in which the times of day are; absent: whatever is local
 * @param days in order, no two alike
 * @param groups taught side by side, nobody in two of them
 * @param values how much single drills are wanted early, 1 where nothing is said
 * @param fundamentals the most weeks between two workings of a drill, by its id
 */
public record Term(
        String title,
        String place,
        Optional<ZoneId> zone,
        List<TermDay> days,
        List<TermGroup> groups,
        Pace pace,
        Map<String, Integer> values,
        Map<String, Integer> fundamentals,
        Optional<Exam> exam) {

    /** Weeks; common practice, no source. */
    public static final int AT_LEAST_EVERY = 6;

    public Term {
        days = List.copyOf(days);
        groups = List.copyOf(groups);
        values = Map.copyOf(values);
        fundamentals = Map.copyOf(fundamentals);
    }
}
