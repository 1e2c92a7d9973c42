package org.drillwright.plan.kept;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Round;
import org.drillwright.register.Entry;

/**
 * What was really worked of a plan: as it was printed, unless somebody says otherwise.
 *
 * @param here who was there for some of the time
 */
public record Worked(List<String> here, List<Round> rounds) {

    public Worked {
        here = List.copyOf(here);
        rounds = List.copyOf(rounds);
    }

    /** All of it. */
    public static Worked of(KeptPlan plan) {
        return new Worked(plan.here(), plan.rounds());
    }

    /** Only the first rounds, by their number. */
    public Worked first(int count) {
        return new Worked(
                here, rounds.stream().filter(round -> round.number() <= count).toList());
    }

    /** Only the rounds of some drills. */
    public Worked only(Collection<String> drills) {
        return new Worked(
                here,
                rounds.stream().filter(round -> drills.contains(round.drill())).toList());
    }

    /** All rounds but some, by their number. */
    public Worked skipping(Collection<Integer> skipped) {
        return new Worked(
                here,
                rounds.stream()
                        .filter(round -> !skipped.contains(round.number()))
                        .toList());
    }

    /**
     * Some were gone for some rounds. Their partners then worked without, or with who took the place; who was gone in all
     * rounds was never there.
     */
    public Worked after(List<Absence> absences) {
        Set<String> left = new LinkedHashSet<>(here);
        absences.forEach(absence -> absence.standIn().ifPresent(left::add));
        left.removeIf(name -> wasNeverThere(name, absences));
        List<Round> worked = rounds;
        for (Absence absence : absences) {
            worked = worked.stream()
                    .map(round -> absence.holds(round.number()) ? without(round, absence) : round)
                    .toList();
        }
        return new Worked(List.copyOf(left), worked);
    }

    /** Without rounds it is the first one that counts. */
    private boolean wasNeverThere(String person, List<Absence> absences) {
        List<Absence> theirs = absences.stream()
                .filter(absence -> absence.person().equals(person))
                .toList();
        return rounds.isEmpty()
                ? theirs.stream().anyMatch(absence -> absence.holds(1))
                : !theirs.isEmpty()
                        && rounds.stream()
                                .allMatch(round -> theirs.stream().anyMatch(absence -> absence.holds(round.number())));
    }

    /** Who takes a place leaves their own. */
    private static Round without(Round round, Absence absence) {
        if (absence.instead().isEmpty()
                || round.groups().stream().noneMatch(group -> group.everyone().contains(absence.person()))) {
            return groups(round, group -> rest(group, absence.person()));
        }
        String other = absence.instead().get();
        return groups(
                round,
                group -> group.everyone().contains(absence.person()) ? taken(group, absence) : rest(group, other));
    }

    private static Optional<Group> taken(Group group, Absence absence) {
        String other = absence.instead().orElseThrow();
        boolean isThere = group.everyone().contains(other);
        boolean asHelper = absence.teaches() || isThere;
        List<String> people = group.people().stream()
                .map(name -> name.equals(absence.person()) && !asHelper ? other : name)
                .filter(name -> !name.equals(absence.person()))
                .collect(Collectors.toCollection(ArrayList::new));
        Optional<String> helper = group.helper().filter(name -> !name.equals(absence.person()));
        if (!asHelper && !people.contains(other)) {
            people.add(other);
        }
        if (absence.teaches() && helper.isEmpty()) {
            helper = Optional.of(other);
        }
        return people.isEmpty()
                ? Optional.empty()
                : Optional.of(new Group(group.kind(), group.place(), people, helper));
    }

    /** Somebody was there who isn't in the plan. */
    public Worked with(String person) {
        Set<String> all = new LinkedHashSet<>(here);
        all.add(person);
        return new Worked(List.copyOf(all), rounds);
    }

    /** Two stood in each other's places in a round. */
    public Worked swapped(int number, String one, String other) {
        return new Worked(
                here,
                rounds.stream()
                        .map(round -> round.number() == number
                                ? groups(round, group -> Optional.of(exchanged(group, one, other)))
                                : round)
                        .toList());
    }

    /** The same with people as they are called now. */
    public Worked renamed(UnaryOperator<String> now) {
        return new Worked(
                here.stream().map(now).toList(),
                rounds.stream()
                        .map(round -> groups(
                                round,
                                group -> Optional.of(new Group(
                                        group.kind(),
                                        group.place(),
                                        group.people().stream().map(now).toList(),
                                        group.helper().map(now)))))
                        .toList());
    }

    private static Round groups(Round round, Function<Group, Optional<Group>> changed) {
        return new Round(
                round.number(),
                round.drill(),
                round.groups().stream()
                        .flatMap(group -> changed.apply(group).stream())
                        .toList());
    }

    private static Optional<Group> rest(Group group, String person) {
        List<String> people =
                group.people().stream().filter(name -> !name.equals(person)).toList();
        return people.isEmpty()
                ? Optional.empty()
                : Optional.of(new Group(
                        group.kind(),
                        group.place(),
                        people,
                        group.helper().filter(name -> !name.equals(person)),
                        group.eyes().filter(name -> !name.equals(person)),
                        group.middle().filter(name -> !name.equals(person))));
    }

    private static Group exchanged(Group group, String one, String other) {
        return new Group(
                group.kind(),
                group.place(),
                group.people().stream().map(name -> exchanged(name, one, other)).toList(),
                group.helper(),
                group.eyes(),
                group.middle().map(name -> exchanged(name, one, other)));
    }

    private static String exchanged(String name, String one, String other) {
        return name.equals(one) ? other : name.equals(other) ? one : name;
    }

    /** What it adds to the record: who was there, then who worked with whom, once for each round. */
    public List<Entry> entries(LocalDate date) {
        List<Entry> entries = new ArrayList<>();
        here.forEach(person -> entries.add(Entry.attended(date, person)));
        for (Round round : rounds) {
            round.groups().forEach(group -> meetings(round, group, date, entries));
        }
        return List.copyOf(entries);
    }

    private static void meetings(Round round, Group group, LocalDate date, List<Entry> entries) {
        List<String> people = group.people();
        for (int one = 0; one < people.size(); one++) {
            for (String other : people.subList(one + 1, people.size())) {
                entries.add(Entry.workedWith(date, people.get(one), round.drill(), other));
            }
            String person = people.get(one);
            group.helper().ifPresent(helper -> entries.add(Entry.workedWith(date, person, round.drill(), helper)));
        }
    }
}
