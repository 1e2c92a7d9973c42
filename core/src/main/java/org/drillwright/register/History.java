package org.drillwright.register;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What the record tells of past classes, each fact once.
 *
 * @param entries in the order of the file
 */
public record History(List<Entry> entries) {

    /** How the record names whoever teaches. */
    public static final String INSTRUCTOR = "instructor";

    public static final History NONE = new History(List.of());

    public History {
        entries = List.copyOf(entries);
    }

    /** The drills in which a person was signed off. */
    public Set<String> signedOff(String person) {
        return entries.stream()
                .filter(entry ->
                        entry.event() == Event.SIGNED_OFF && entry.person().equals(person))
                .map(Entry::drill)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** The days on record, the latest first. */
    public List<LocalDate> days() {
        return entries.stream()
                .map(Entry::date)
                .distinct()
                .sorted(Comparator.reverseOrder())
                .toList();
    }

    /** The lines that tell who worked with whom. */
    public List<Entry> meetings() {
        return entries.stream()
                .filter(entry -> entry.event() == Event.WORKED_WITH)
                .toList();
    }

    /** The same with more. */
    public History with(List<Entry> more) {
        return new History(Stream.concat(entries.stream(), more.stream()).toList());
    }

    /** What was known before a day, so that a class that is planned again does not count itself as past. */
    public History before(LocalDate day) {
        return new History(
                entries.stream().filter(entry -> entry.date().isBefore(day)).toList());
    }
}
