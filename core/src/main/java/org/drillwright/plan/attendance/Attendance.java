package org.drillwright.plan.attendance;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drillwright.register.Entry;
import org.drillwright.register.Event;
import org.drillwright.register.History;

/**
 * Who came to the classes on record.
 *
 * @param held the days of these classes, in order
 * @param came the days on which each person came
 */
public record Attendance(List<LocalDate> held, Map<String, Set<LocalDate>> came) {

    /** Classes that are looked back at; common practice, no source. */
    public static final int LAST = 8;

    /** With fewer classes on a weekday, all days of the week are looked at. */
    private static final int ENOUGH = 3;

    public Attendance {
        held = List.copyOf(held);
        came = Map.copyOf(came);
    }

    /** Of some people; a class is a day on which one of them came. */
    public static Attendance of(History history, Collection<String> people) {
        Set<String> wanted = Set.copyOf(people);
        NavigableSet<LocalDate> held = new TreeSet<>();
        Map<String, Set<LocalDate>> came = new HashMap<>();
        for (Entry entry : history.entries()) {
            if (entry.event() == Event.ATTENDED && wanted.contains(entry.person())) {
                held.add(entry.date());
                came.computeIfAbsent(entry.person(), person -> new HashSet<>()).add(entry.date());
            }
        }
        return new Attendance(List.copyOf(held), came);
    }

    public boolean came(String person, LocalDate day) {
        return came.getOrDefault(person, Set.of()).contains(day);
    }

    /** The day on which somebody came first; nothing if it was never. */
    public Optional<LocalDate> first(String person) {
        return came.getOrDefault(person, Set.of()).stream().min(LocalDate::compareTo);
    }

    /**
     * How likely somebody is to come to a class: (times there + 1) / (classes + 2), so that few classes prove little, over
     * the last {@value #LAST} on that weekday since the person first came; over all days of the week if these are fewer than
     * three. For somebody who never came the mean of those who did; 1 for all while nothing is on record.
     */
    public double chance(String person, LocalDate date) {
        return own(person, date)
                .orElseGet(() -> came.keySet().stream()
                        .sorted()
                        .flatMap(other -> own(other, date).stream().boxed())
                        .mapToDouble(Double::doubleValue)
                        .average()
                        .orElse(1));
    }

    private OptionalDouble own(String person, LocalDate date) {
        Optional<LocalDate> first = first(person).filter(day -> day.isBefore(date));
        if (first.isEmpty()) {
            return OptionalDouble.empty();
        }
        List<LocalDate> since = held.stream()
                .filter(day -> day.isBefore(date) && !day.isBefore(first.get()))
                .toList();
        List<LocalDate> sameDay = since.stream()
                .filter(day -> day.getDayOfWeek() == date.getDayOfWeek())
                .toList();
        List<LocalDate> last = last(sameDay.size() < ENOUGH ? since : sameDay);
        long there = last.stream().filter(day -> came(person, day)).count();
        return OptionalDouble.of((there + 1.0) / (last.size() + 2));
    }

    /** The last {@value #LAST} of some days, or all of them. */
    static List<LocalDate> last(List<LocalDate> days) {
        return days.subList(Math.max(0, days.size() - LAST), days.size());
    }

    /** The last classes, whoever came. */
    public List<LocalDate> last() {
        return last(held);
    }

    /** How many of some people came on a day. */
    public long number(LocalDate day, Stream<String> people) {
        return people.filter(person -> came(person, day)).count();
    }
}
