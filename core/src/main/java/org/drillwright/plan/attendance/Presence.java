package org.drillwright.plan.attendance;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.plan.roster.Knowledge;

/**
 * How somebody has come of late: no more than what is on record, and nothing that ranks people.
 *
 * @param came to how many of the last classes
 * @param of how many these were since the person came first, at most eight; 0 for somebody who never came
 * @param weeks since the last time, in whole weeks; nothing for somebody who never came
 * @param missed drills that were on meanwhile, and that the person has never worked and doesn't know, as they were on first
 */
public record Presence(String person, int came, int of, Optional<Long> weeks, List<String> missed) {

    public Presence {
        missed = List.copyOf(missed);
    }

    /** @param drills that are looked at, in teaching order */
    public static Presence of(
            String person,
            List<String> people,
            List<String> drills,
            Attendance attendance,
            DrillDays worked,
            Knowledge knowledge,
            LocalDate today) {
        Optional<LocalDate> first = attendance.first(person);
        List<LocalDate> since = Attendance.last(attendance.held().stream()
                .filter(day -> first.filter(start -> !day.isBefore(start)).isPresent())
                .toList());
        Set<LocalDate> days = attendance.came().getOrDefault(person, Set.of());
        List<LocalDate> away = since.stream().filter(day -> !days.contains(day)).toList();
        List<String> missed = new ArrayList<>();
        for (String drill : drills) {
            boolean lacks =
                    !knowledge.knows(person, drill) && worked.of(person, drill).isEmpty();
            if (lacks && worked.ofGroup(people, drill, attendance).stream().anyMatch(away::contains)) {
                missed.add(drill);
            }
        }
        return new Presence(
                person,
                since.size() - away.size(),
                since.size(),
                days.stream().max(LocalDate::compareTo).map(last -> ChronoUnit.WEEKS.between(last, today)),
                missed);
    }
}
