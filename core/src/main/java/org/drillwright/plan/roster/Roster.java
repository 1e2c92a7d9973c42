package org.drillwright.plan.roster;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * The people of a school.
 *
 * @param people students, in the order of the file
 * @param assistants those who help to teach; they know every drill
 * @param apart pairs that are never made
 */
public record Roster(List<Person> people, List<String> assistants, List<Apart> apart) {

    public static final Roster EMPTY = new Roster(List.of(), List.of(), List.of());

    public Roster {
        people = List.copyOf(people);
        assistants = List.copyOf(assistants);
        apart = List.copyOf(apart);
    }

    public Optional<Person> person(String name) {
        return people.stream().filter(person -> person.name().equals(name)).findFirst();
    }

    /** The same with each person changed. */
    public Roster withEach(UnaryOperator<Person> change) {
        return new Roster(people.stream().map(change).toList(), assistants, apart);
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
