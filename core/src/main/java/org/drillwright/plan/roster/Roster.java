package org.drillwright.plan.roster;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The people of a school.
 *
 * @param people students, in the order of the file
 * @param assistants those who help to teach; they know every drill
 * @param apart pairs that are never made
 * @param former names that somebody had, each with the present one
 */
public record Roster(List<Person> people, List<String> assistants, List<Apart> apart, Map<String, String> former) {

    public static final Roster EMPTY = new Roster(List.of(), List.of(), List.of());

    public Roster {
        people = List.copyOf(people);
        assistants = List.copyOf(assistants);
        apart = List.copyOf(apart);
        former = Map.copyOf(former);
    }

    /** A roster on which everybody was always called so. */
    public Roster(List<Person> people, List<String> assistants, List<Apart> apart) {
        this(people, assistants, apart, Map.of());
    }

    public Optional<Person> person(String name) {
        return people.stream().filter(person -> person.name().equals(name)).findFirst();
    }

    /** The same with each person changed. */
    public Roster withEach(UnaryOperator<Person> change) {
        return new Roster(people.stream().map(change).toList(), assistants, apart, former);
    }

    /** The same after some have left: they are away, and what they did stays. */
    public Roster without(Collection<String> gone) {
        return new Roster(
                people.stream()
                        .map(person -> gone.contains(person.name()) ? person.goneAway() : person)
                        .toList(),
                assistants.stream().filter(name -> !gone.contains(name)).toList(),
                apart,
                former);
    }

    /** Everyone's name, students first. */
    public List<String> names() {
        return Stream.concat(people.stream().map(Person::name), assistants.stream())
                .toList();
    }

    public boolean areApart(String one, String other) {
        return apart.stream().anyMatch(pair -> pair.parts(one, other));
    }
}
