package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Hands;
import org.drillwright.plan.roster.Apart;
import org.drillwright.plan.roster.ClassPractice;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.roster.Person;
import org.drillwright.register.Entry;
import org.drillwright.register.History;

/** Requests for tests, put together step by step. All people are invented. */
final class Classes {

    static final String DRILL = "thrust";

    private final List<Person> people = new ArrayList<>();
    private final List<String> helpers = new ArrayList<>(List.of(History.INSTRUCTOR));
    private final List<Apart> apart = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private final List<String> soloists = new ArrayList<>();
    private final Map<String, Hands> hands = new HashMap<>();
    private final List<Round> played = new ArrayList<>();
    private List<String> drills = List.of();
    private Mode mode = Mode.LEARNING;
    private Movement movement = Movement.FREE;
    private ClassPractice ways = ClassPractice.USUAL;

    /** People called A0, A1 and so on, who are new, then B0, B1 and so on, who know the drill. */
    static Classes of(int fresh, int knowing) {
        Classes classes = new Classes();
        for (int at = 0; at < fresh; at++) {
            classes.people.add(Person.named("A" + at));
        }
        for (int at = 0; at < knowing; at++) {
            classes.people.add(Person.named("B" + at).withKnown(Set.of(DRILL)));
        }
        return classes;
    }

    static Classes of(List<Person> people) {
        Classes classes = new Classes();
        classes.people.addAll(people);
        return classes;
    }

    static List<Person> named(Set<String> knows, String... names) {
        return Arrays.stream(names)
                .map(name -> Person.named(name).withKnown(knows))
                .toList();
    }

    Classes rounds(int rounds) {
        drills = Collections.nCopies(rounds, DRILL);
        return this;
    }

    Classes drills(String... each) {
        drills = List.of(each);
        return this;
    }

    Classes walk() {
        movement = Movement.WALK;
        return this;
    }

    Classes training() {
        mode = Mode.TRAINING;
        return this;
    }

    Classes leftOver(LeftOver choice) {
        return ways(ClassPractice.of(choice));
    }

    Classes ways(ClassPractice choice) {
        ways = choice;
        return this;
    }

    Classes noInstructor() {
        helpers.clear();
        return this;
    }

    Classes assistants(String... names) {
        helpers.addAll(List.of(names));
        return this;
    }

    Classes apart(String one, String other) {
        apart.add(new Apart(one, other));
        return this;
    }

    Classes past(Entry entry) {
        entries.add(entry);
        return this;
    }

    Classes soloists(String... names) {
        soloists.addAll(List.of(names));
        return this;
    }

    Classes hands(String drill, Hands same) {
        hands.put(drill, same);
        return this;
    }

    /** A round of the drill that was worked already, as in {@code Ash-Bo Cy-instructor Dee}. */
    Classes played(String round) {
        List<Group> groups = new ArrayList<>();
        for (String text : round.split(" ")) {
            List<String> names = new ArrayList<>(List.of(text.split("-")));
            boolean helped = names.removeAll(helpers);
            Group.Kind kind = helped ? Group.Kind.HELPED : names.size() == 1 ? Group.Kind.SOLO : Group.Kind.PAIR;
            int place = kind == Group.Kind.SOLO ? 0 : groups.size() + 1;
            groups.add(new Group(kind, place, names, helped ? Optional.of(helpers.get(0)) : Optional.empty()));
        }
        played.add(new Round(played.size() + 1, DRILL, groups));
        return this;
    }

    PairingRequest request() {
        Map<String, Set<String>> known = new HashMap<>();
        people.forEach(person -> known.put(person.name(), person.knows()));
        return new PairingRequest(
                people,
                soloists,
                helpers,
                apart,
                List.of("beginner", "intermediate", "training"),
                mode,
                movement,
                ways,
                new Knowledge(known),
                hands,
                drills,
                new History(entries),
                played);
    }

    PairingPlan plan() {
        return Pairing.of(request()).plan();
    }
}
