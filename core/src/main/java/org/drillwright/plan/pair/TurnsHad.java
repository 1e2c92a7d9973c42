package org.drillwright.plan.pair;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.plan.roster.Person;
import org.drillwright.register.Entry;
import org.drillwright.register.Event;
import org.drillwright.register.History;

/**
 * Turns with a helper beyond a fair share. Each class is an account of its own: whoever was there is owed an equal share of
 * that day's turns, and has had his own. What is over or lacking is carried on. Who never came yet is owed nothing and owes
 * nothing, so neither the turns of all who came before fall to him nor are they kept from him.
 */
final class TurnsHad {

    /** A share is rounded to thousandths of a turn. */
    private static final long PARTS = 1_000;

    private final Set<String> helpers;
    private final Map<LocalDate, Set<String>> there = new HashMap<>();
    private final Map<LocalDate, Long> turns = new HashMap<>();
    private final Map<String, Long> over = new HashMap<>();

    TurnsHad(History history, List<String> helpers) {
        this.helpers = new HashSet<>(helpers);
        this.helpers.add(History.INSTRUCTOR);
        history.entries().forEach(this::enter);
        there.forEach((day, people) -> {
            long share = (PARTS * turns.getOrDefault(day, 0L) + people.size() / 2) / people.size();
            people.forEach(person -> over.merge(person, -share, Long::sum));
        });
    }

    private void enter(Entry entry) {
        boolean met = entry.event() == Event.WORKED_WITH;
        if (met || entry.event() == Event.ATTENDED) {
            boolean helped = met && helpers.contains(entry.person()) != helpers.contains(entry.with());
            for (String person : met ? List.of(entry.person(), entry.with()) : List.of(entry.person())) {
                if (!helpers.contains(person)) {
                    there.computeIfAbsent(entry.date(), day -> new HashSet<>()).add(person);
                    over.merge(person, helped ? PARTS : 0, Long::sum);
                    turns.merge(entry.date(), helped ? 1L : 0L, Long::sum);
                }
            }
        }
    }

    /** For each student, in their order, whole turns beyond those of whoever has had fewest for his share. */
    List<Integer> of(List<Person> students) {
        List<Long> had = students.stream()
                .map(student -> over.getOrDefault(student.name(), 0L))
                .toList();
        long least = had.stream().mapToLong(Long::longValue).min().orElse(0);
        return had.stream()
                .map(one -> Math.toIntExact((one - least + PARTS / 2) / PARTS))
                .toList();
    }
}
