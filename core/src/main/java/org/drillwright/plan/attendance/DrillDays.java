package org.drillwright.plan.attendance;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Set;
import java.util.TreeMap;
import org.drillwright.register.Entry;
import org.drillwright.register.History;

/**
 * On which days each person worked which drill, and with whom.
 *
 * @param days by person, drill and day
 */
public record DrillDays(Map<String, Map<String, NavigableMap<LocalDate, Set<String>>>> days) {

    public DrillDays {
        days = Map.copyOf(days);
    }

    public static DrillDays of(History history) {
        Map<String, Map<String, NavigableMap<LocalDate, Set<String>>>> days = new TreeMap<>();
        for (Entry entry : history.meetings()) {
            add(entry.person(), entry, entry.with(), days);
            add(entry.with(), entry, entry.person(), days);
        }
        return new DrillDays(days);
    }

    private static void add(
            String person,
            Entry entry,
            String partner,
            Map<String, Map<String, NavigableMap<LocalDate, Set<String>>>> days) {
        days.computeIfAbsent(person, one -> new TreeMap<>())
                .computeIfAbsent(entry.drill(), drill -> new TreeMap<>())
                .computeIfAbsent(entry.date(), day -> new HashSet<>())
                .add(partner);
    }

    /** The days on which somebody worked a drill, in order, each with the partners. */
    public NavigableMap<LocalDate, Set<String>> of(String person, String drill) {
        return days.getOrDefault(person, Map.of()).getOrDefault(drill, new TreeMap<>());
    }

    /** All drills that somebody worked. */
    public Set<String> drills(String person) {
        return days.getOrDefault(person, Map.of()).keySet();
    }

    /**
     * The days on which a drill was the group's, not only that of one who caught up: at least half of those who came worked
     * it. Common practice, no source.
     */
    public List<LocalDate> ofGroup(Collection<String> people, String drill, Attendance attendance) {
        NavigableMap<LocalDate, Integer> worked = new TreeMap<>();
        for (String person : people) {
            of(person, drill).keySet().forEach(day -> worked.merge(day, 1, Integer::sum));
        }
        return worked.entrySet().stream()
                .filter(day -> 2L * day.getValue() >= attendance.number(day.getKey(), people.stream()))
                .map(Map.Entry::getKey)
                .toList();
    }
}
