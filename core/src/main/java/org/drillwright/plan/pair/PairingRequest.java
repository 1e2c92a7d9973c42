package org.drillwright.plan.pair;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.model.Drill;
import org.drillwright.model.Hands;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Apart;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.ClassPractice;
import org.drillwright.plan.roster.Knowledge;
import org.drillwright.plan.roster.Mode;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;
import org.drillwright.register.History;

/**
 * What rounds of partners are asked for.
 *
 * @param students who work in pairs, in the roster's order
 * @param soloists who are here but do only solo work
 * @param helpers who may work with a student left over, the instructor first
 * @param apart pairs that are never made
 * @param levels the school's levels, the lowest first
 * @param ways what is done for those who have no partner, and who leads first
 * @param hands for each drill that states it, whether partners' hands are the same
 * @param drills the drill of each round of the class, played rounds too
 * @param history what was before this class
 * @param played rounds that were worked already; they stay as they are
 */
public record PairingRequest(
        List<Person> students,
        List<String> soloists,
        List<String> helpers,
        List<Apart> apart,
        List<String> levels,
        Mode mode,
        Movement movement,
        ClassPractice ways,
        Knowledge knowledge,
        Map<String, Hands> hands,
        List<String> drills,
        History history,
        List<Round> played) {

    public PairingRequest {
        students = List.copyOf(students);
        soloists = List.copyOf(soloists);
        helpers = List.copyOf(helpers);
        apart = List.copyOf(apart);
        levels = List.copyOf(levels);
        hands = Map.copyOf(hands);
        drills = List.copyOf(drills);
        played = List.copyOf(played);
    }

    /**
     * The rounds of a class.
     *
     * @param drills the drill of each round, in order; one drill may stand there several times
     */
    public static PairingRequest of(
            School school, Roster roster, ClassBrief brief, History history, List<Drill> drills) {
        History before = history.before(brief.date());
        List<Person> here = brief.here(roster);
        Map<String, Hands> hands = new HashMap<>();
        drills.forEach(drill -> hands.put(drill.id(), drill.hands()));
        List<String> assistants = roster.assistants().stream()
                .filter(name -> !brief.away().contains(name))
                .toList();
        return new PairingRequest(
                here.stream().filter(person -> !isSolo(person, brief)).toList(),
                here.stream()
                        .filter(person -> isSolo(person, brief))
                        .map(Person::name)
                        .toList(),
                brief.instructor()
                        ? Stream.concat(Stream.of(History.INSTRUCTOR), assistants.stream())
                                .toList()
                        : assistants,
                roster.apart(),
                school.levels().stream().map(level -> level.name()).toList(),
                brief.mode(),
                brief.movement(),
                brief.ways(),
                Knowledge.of(roster, before),
                hands,
                drills.stream().map(Drill::id).toList(),
                before,
                List.of());
    }

    private static boolean isSolo(Person person, ClassBrief brief) {
        return person.solo() || brief.solo().contains(person.name());
    }

    /**
     * The same class as a plan that was printed has it.
     *
     * @param roster in whose order the people are
     * @param round those who are in it are there
     * @param still helpers who are there
     * @param each the drill of each round
     */
    public PairingRequest standing(Roster roster, Round round, List<String> still, List<String> each) {
        List<Person> there = roster.people().stream()
                .filter(person -> round.groupOf(person.name()).isPresent())
                .toList();
        List<String> alone = there.stream()
                .map(Person::name)
                .filter(name -> soloists.contains(name)
                        && round.groupOf(name)
                                .filter(group -> group.kind() == Group.Kind.SOLO)
                                .isPresent())
                .toList();
        return new PairingRequest(
                there.stream().filter(person -> !alone.contains(person.name())).toList(),
                alone,
                still,
                apart,
                levels,
                mode,
                movement,
                ways,
                knowledge,
                hands,
                each,
                history,
                played);
    }

    /** The rest of a class with the same people. */
    public PairingRequest after(List<Round> played, Roster roster) {
        return after(played, roster, List.of(), List.of());
    }

    /**
     * The rest of a class after some have gone and others have come.
     *
     * @param played the rounds before the one from which it is planned anew
     * @param roster where those who come are found
     */
    public PairingRequest after(
            List<Round> played, Roster roster, Collection<String> without, Collection<String> with) {
        List<Person> now = new ArrayList<>();
        for (Person person : roster.people()) {
            boolean was = students.stream().anyMatch(one -> one.name().equals(person.name()));
            if ((was && !without.contains(person.name())) || with.contains(person.name())) {
                now.add(person);
            }
        }
        Set<String> paired = Set.copyOf(with);
        return new PairingRequest(
                now,
                soloists.stream()
                        .filter(name -> !without.contains(name) && !paired.contains(name))
                        .toList(),
                helpers.stream().filter(name -> !without.contains(name)).toList(),
                apart,
                levels,
                mode,
                movement,
                ways,
                knowledge,
                hands,
                drills,
                history,
                played);
    }

    /** The same with other ways of helping those who have no partner. */
    PairingRequest with(ClassPractice choice) {
        return new PairingRequest(
                students, soloists, helpers, apart, levels, mode, movement, choice, knowledge, hands, drills, history,
                played);
    }

    /** The same with another way to change over. */
    public PairingRequest moving(Movement choice) {
        return new PairingRequest(
                students, soloists, helpers, apart, levels, mode, choice, ways, knowledge, hands, drills, history,
                played);
    }

    /** The same with other drills for its rounds. */
    PairingRequest on(List<String> each) {
        return new PairingRequest(
                students, soloists, helpers, apart, levels, mode, movement, ways, knowledge, hands, each, history,
                played);
    }

    /** Whether a student is new to a drill. */
    public boolean isNew(String person, String drill) {
        return !knowledge.knows(person, drill);
    }

    /** The drills of the rounds still to be planned. */
    List<String> open() {
        return drills.subList(Math.min(played.size(), drills.size()), drills.size());
    }
}
