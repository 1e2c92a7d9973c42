package org.drillwright.plan.roster;

import java.time.DayOfWeek;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Someone of the school.
 *
 * @param name a name or initials, as the roster has it; no two are alike
 * @param level the name of one of the school's levels, if stated
 * @param skill from 0 to 99, if the school keeps such a number
 * @param knows ids of drills known before the record begins
 * @param days the days on which the person can train outside class
 * @param away not here today
 * @param solo does only solo work today
 */
public record Person(
        String name,
        Optional<String> level,
        Optional<Hand> hand,
        OptionalInt skill,
        Set<String> knows,
        List<DayOfWeek> days,
        boolean away,
        boolean solo) {

    public Person {
        knows = Set.copyOf(knows);
        days = List.copyOf(days);
    }

    /** Someone of whom only the name is known. */
    public static Person named(String name) {
        return new Person(
                name, Optional.empty(), Optional.empty(), OptionalInt.empty(), Set.of(), List.of(), false, false);
    }

    public Person withKnown(Set<String> drills) {
        return new Person(name, level, hand, skill, drills, days, away, solo);
    }

    public Person withSkill(int number) {
        return new Person(name, level, hand, OptionalInt.of(number), knows, days, away, solo);
    }

    /** The same under another name. */
    public Person called(String other) {
        return new Person(other, level, hand, skill, knows, days, away, solo);
    }

    /** The same, not here. */
    public Person goneAway() {
        return new Person(name, level, hand, skill, knows, days, true, solo);
    }

    public Person withHand(Hand one) {
        return new Person(name, level, Optional.of(one), skill, knows, days, away, solo);
    }
}
