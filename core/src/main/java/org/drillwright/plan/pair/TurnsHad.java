package org.drillwright.plan.pair;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.drillwright.plan.roster.Person;
import org.drillwright.record.Entry;
import org.drillwright.record.Event;
import org.drillwright.record.History;

/**
 * Turns with a helper in the last six classes that somebody came to, or as many as these would be if there were fewer. Who
 * never came yet begins in the middle of those who are here, so that the turns of all who came before don't fall to him.
 */
final class TurnsHad {

    private static final int CLASSES = 6;

    private final History history;
    private final Set<String> helpers;

    TurnsHad(History history, List<String> helpers) {
        this.history = history;
        this.helpers = new HashSet<>(helpers);
        this.helpers.add(History.INSTRUCTOR);
    }

    /** For each student, in their order. */
    List<Integer> of(List<Person> students) {
        List<Optional<Integer>> known =
                students.stream().map(student -> scaled(student.name())).toList();
        List<Integer> sorted = known.stream().flatMap(Optional::stream).sorted().toList();
        int middle = sorted.isEmpty() ? 0 : sorted.get((sorted.size() - 1) / 2);
        List<Integer> turns = new ArrayList<>();
        known.forEach(one -> turns.add(one.orElse(middle)));
        return turns;
    }

    /** Nothing of somebody who came to no class. */
    private Optional<Integer> scaled(String name) {
        NavigableMap<LocalDate, Integer> turns = new TreeMap<>();
        for (Entry entry : history.entries()) {
            boolean met = entry.event() == Event.WORKED_WITH;
            boolean names = entry.person().equals(name) || (met && entry.with().equals(name));
            if (names && (met || entry.event() == Event.ATTENDED)) {
                boolean helped = met && (helpers.contains(entry.with()) || helpers.contains(entry.person()));
                turns.merge(entry.date(), helped ? 1 : 0, Integer::sum);
            }
        }
        List<Integer> last =
                turns.descendingMap().values().stream().limit(CLASSES).toList();
        int sum = last.stream().mapToInt(Integer::intValue).sum();
        return last.isEmpty() ? Optional.empty() : Optional.of((2 * CLASSES * sum + last.size()) / (2 * last.size()));
    }
}
