package org.drillwright.plan.term;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.Set;

/**
 * A day on which there is class.
 *
 * @param key names the class for good; it stays when the class is moved to another day
 * @param begins when, if it is stated
 * @param length from opening to closing
 * @param noNew whether nothing new is taught
 * @param away those of whom it is known that they won't come
 */
public record TermDay(
        String key, LocalDate date, Optional<LocalTime> begins, Duration length, boolean noNew, Set<String> away) {

    public TermDay {
        away = Set.copyOf(away);
    }
}
