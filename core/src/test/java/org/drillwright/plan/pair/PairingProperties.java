package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.drillwright.plan.roster.BothNew;
import org.drillwright.plan.roster.ClassPractice;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.roster.Roster;

/** What holds of every plan for every class. */
class PairingProperties {

    private static final List<String> DRILLS = List.of("cut", "thrust", "parry");

    /** A class drawn by chance, and what of it the tests need to know. */
    private record Drawn(
            Classes classes, List<Person> people, Set<Set<String>> apart, List<String> drills, boolean taught) {

        boolean permits(int one, int other, String drill, boolean training) {
            Person a = people.get(one);
            Person b = people.get(other);
            boolean safe = training || a.knows().contains(drill) || b.knows().contains(drill);
            return safe && !apart.contains(Set.of(a.name(), b.name()));
        }

        /** The fewest who remain without partner in a round, found by trying all pairs; one with the instructor. */
        int fewestLeft(String drill, boolean training) {
            int all = (1 << people.size()) - 1;
            int[] most = new int[all + 1];
            for (int set = 1; set <= all; set++) {
                int one = Integer.numberOfTrailingZeros(set);
                most[set] = most[set & ~(1 << one)];
                for (int other = one + 1; other < people.size(); other++) {
                    if ((set >> other & 1) == 1 && permits(one, other, drill, training)) {
                        most[set] = Math.max(most[set], 2 + most[set & ~(1 << one) & ~(1 << other)]);
                    }
                }
            }
            int left = people.size() - most[all];
            return taught ? Math.max(0, left - 1) : left;
        }
    }

    private static Drawn drawn(int people, int rounds, long seed) {
        Random chance = new Random(seed);
        List<Person> drawn = new ArrayList<>();
        for (int at = 0; at < people; at++) {
            Set<String> knows = new HashSet<>();
            for (String drill : DRILLS) {
                if (chance.nextInt(3) > 0) {
                    knows.add(drill);
                }
            }
            drawn.add(Person.named("P" + at).withKnown(knows).withSkill(chance.nextInt(9)));
        }
        String[] drills = new String[rounds];
        for (int round = 0; round < rounds; round++) {
            drills[round] = DRILLS.get(chance.nextInt(2) * chance.nextInt(3));
        }
        Classes classes = Classes.of(drawn).drills(drills).ways(ClassPractice.USUAL.with(BothNew.NEVER));
        Set<Set<String>> apart = new HashSet<>();
        for (int pair = 0; pair < chance.nextInt(1 + people); pair++) {
            String one = "P" + chance.nextInt(people);
            String other = "P" + chance.nextInt(people);
            if (!one.equals(other)) {
                apart.add(Set.of(one, other));
                classes.apart(one, other);
            }
        }
        boolean taught = chance.nextBoolean();
        if (!taught) {
            classes.noInstructor();
        }
        if (chance.nextBoolean()) {
            classes.walk();
        }
        return new Drawn(classes, drawn, apart, List.of(drills), taught);
    }

    @Property(tries = 150)
    void in_a_learning_class_nobody_is_lost_and_no_forbidden_pair_is_made(
            @ForAll @IntRange(min = 0, max = 11) int people, @ForAll @IntRange(max = 6) int rounds, @ForAll long seed) {
        check(drawn(people, rounds, seed), false);
    }

    @Property(tries = 60)
    void in_a_training_class_nobody_is_lost_and_no_forbidden_pair_is_made(
            @ForAll @IntRange(min = 0, max = 11) int people, @ForAll @IntRange(max = 6) int rounds, @ForAll long seed) {
        Drawn drawn = drawn(people, rounds, seed);
        drawn.classes().training();
        check(drawn, true);
    }

    private static void check(Drawn drawn, boolean training) {
        PairingPlan plan = drawn.classes().plan();
        assertEquals(drawn.drills().size(), plan.rounds().size());
        for (Round round : plan.rounds()) {
            List<String> seen = round.groups().stream()
                    .flatMap(group -> group.people().stream())
                    .toList();
            Set<String> names = new TreeSet<>();
            drawn.people().forEach(person -> names.add(person.name()));
            assertEquals(names, new TreeSet<>(seen), "somebody is lost");
            assertEquals(seen.size(), new HashSet<>(seen).size(), "somebody works twice");
            int left = 0;
            for (Group group : round.groups()) {
                left += group.people().size()
                        - (group.helper().isPresent()
                                ? 1
                                : Math.min(2, group.people().size()));
                left += group.kind() == Group.Kind.SOLO ? 1 : 0;
                check(drawn, round.drill(), group, training);
            }
            assertEquals(drawn.fewestLeft(round.drill(), training), left, () -> "more left than need be in " + round);
        }
        assertTrue(
                plan.verdict()
                                .orElseThrow()
                                .cost()
                                .compareTo(plan.verdict().orElseThrow().bound())
                        >= 0,
                "the bound is above the plan");
    }

    private static void check(Drawn drawn, String drill, Group group, boolean training) {
        for (String one : group.people()) {
            for (String other : group.people()) {
                assertTrue(
                        one.equals(other) || !drawn.apart().contains(Set.of(one, other)), () -> "kept apart: " + group);
            }
        }
        boolean known = drawn.people().stream()
                .anyMatch(person -> group.holds(person.name()) && person.knows().contains(drill));
        assertTrue(
                training
                        || known
                        || group.helper().isPresent()
                        || group.people().size() == 1,
                () -> "nobody knows " + drill + ": " + group);
    }

    @Property(tries = 40)
    void the_same_class_gives_the_same_plan(
            @ForAll @IntRange(min = 2, max = 14) int people,
            @ForAll @IntRange(min = 1, max = 5) int rounds,
            @ForAll long seed) {
        assertEquals(
                drawn(people, rounds, seed).classes().plan(),
                drawn(people, rounds, seed).classes().plan());
    }

    /** Whoever has left stays away, whoever has come is there, and what was played stays as it was. */
    @Property(tries = 60)
    void the_rest_of_a_class_can_be_planned_anew(
            @ForAll @IntRange(min = 3, max = 11) int people,
            @ForAll @IntRange(min = 2, max = 6) int rounds,
            @ForAll long seed) {
        Drawn drawn = drawn(people, rounds, seed);
        PairingRequest request = drawn.classes().request();
        List<Round> played = Pairing.of(request).plan().rounds().subList(0, rounds / 2);
        List<Person> all = new ArrayList<>(drawn.people());
        all.add(Person.named("late"));
        var roster = new Roster(all, List.of(), request.apart());
        PairingPlan plan = Pairing.of(request.after(played, roster, List.of("P1"), List.of("late")))
                .plan();
        assertEquals(played, plan.rounds().subList(0, played.size()));
        assertEquals(rounds, plan.rounds().size());
        for (Round round : plan.rounds().subList(played.size(), rounds)) {
            assertTrue(round.groupOf("P1").isEmpty());
            assertTrue(round.groupOf("late").isPresent());
            assertEquals(
                    people,
                    round.groups().stream()
                            .mapToInt(group -> group.people().size())
                            .sum());
            round.groups().forEach(group -> check(drawn, round.drill(), group, false));
        }
    }

    @Property(tries = 40)
    void two_new_ones_work_together_only_where_it_was_asked_for_and_then_it_is_told(
            @ForAll @IntRange(min = 1, max = 9) int fresh, @ForAll @IntRange(min = 0, max = 4) int knowing) {
        PairingPlan plan =
                Classes.of(fresh, knowing).leftOver(LeftOver.BOTH_NEW).rounds(2).plan();
        for (Round round : plan.rounds()) {
            for (Group group : round.groups()) {
                boolean bothNew = group.people().stream().allMatch(name -> name.startsWith("A"))
                        && group.people().size() > 1;
                assertEquals(bothNew, group.eyes().isPresent());
                assertTrue(!bothNew
                        || plan.facts().stream().anyMatch(fact -> fact.english().contains("of two")));
            }
        }
    }
}
