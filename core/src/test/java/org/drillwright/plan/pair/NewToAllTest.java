package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drillwright.plan.roster.BothNew;
import org.drillwright.plan.roster.ClassPractice;
import org.drillwright.plan.roster.First;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.roster.Movement;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** A drill that is new to all, or to more than can be served: they work in twos, and those who teach have an eye on them. */
class NewToAllTest {

    private static Map<String, Integer> watched(PairingPlan plan, String watcher) {
        Map<String, Integer> rounds = new HashMap<>();
        for (Round round : plan.rounds()) {
            for (Group group : round.groups()) {
                boolean his = group.eyes().filter(watcher::equals).isPresent();
                group.people().forEach(name -> rounds.merge(name, his ? 1 : 0, Integer::sum));
            }
        }
        return rounds;
    }

    /** Everybody with everybody before anybody twice: n - 1 rounds of n, in whatever movement. */
    @ParameterizedTest
    @EnumSource(Movement.class)
    void everybody_meets_everybody_before_anybody_twice(Movement movement) {
        for (int people : new int[] {2, 4, 8, 12}) {
            Classes classes = Classes.of(people, 0).rounds(people - 1);
            PairingPlan plan = (movement == Movement.WALK ? classes.walk() : classes).plan();
            Set<Set<String>> met = new HashSet<>();
            for (Round round : plan.rounds()) {
                for (Group group : round.groups()) {
                    if (people > 2) {
                        assertEquals(Group.Kind.WATCHED, group.kind());
                        assertEquals(Optional.of("instructor"), group.eyes());
                    }
                    assertTrue(group.people().size() == 2 && met.add(Set.copyOf(group.people())), plan::toString);
                }
            }
            assertEquals(people * (people - 1) / 2, met.size());
            assertTrue(plan.verdict().orElseThrow().isProvedBest());
            assertEquals(List.of(), plan.shortages());
        }
    }

    /** Two take half of the posts each and change halves: nobody's rounds under the two differ by more than 3. */
    @ParameterizedTest
    @CsvSource({"8", "12", "24"})
    void two_who_watch_change_halves(int people) {
        PairingPlan plan = Classes.of(people, 0)
                .assistants("Marlow")
                .walk()
                .rounds(people - 1)
                .plan();
        Map<String, Integer> first = watched(plan, "instructor");
        Map<String, Integer> second = watched(plan, "Marlow");
        first.forEach((name, rounds) -> assertTrue(Math.abs(rounds - second.getOrDefault(name, 0)) <= 3, name));
        for (Round round : plan.rounds()) {
            assertEquals(
                    people / 4,
                    round.groups().stream()
                            .filter(group ->
                                    group.eyes().filter("Marlow"::equals).isPresent())
                            .count());
        }
    }

    @ParameterizedTest(name = "{0} new, {1} know it, {2} help, {3} posts: {4}")
    @CsvSource(
            delimiter = '|',
            value = {
                "8 | 0 | 2 | 12 | new to all: pairs of two new by choice, 2 pairs under each pair of eyes",
                "8 | 0 | 1 | 12 | new to all: pairs of two new by choice, 4 pairs under one pair of eyes",
                "10 | 0 | 2 | 12 | new to all: pairs of two new by choice, 2 or 3 pairs under each pair of eyes",
                // two with one each, one in the middle of each; of six left three pairs
                "10 | 2 | 1 | 12 | 10 new, 2 know it: some pairs of two new by choice, 3 pairs under one pair of eyes"
            })
    void it_is_said_to_be_by_choice(int fresh, int knowing, int helpers, int posts, String sentence) {
        Classes classes = Classes.of(fresh, knowing).rounds(1).ways(ways(BothNew.NEEDED, posts));
        PairingPlan plan = (helpers == 2 ? classes.assistants("Marlow") : classes).plan();
        assertEquals(
                List.of(sentence),
                plan.watched().stream().map(watch -> watch.sentence().english()).toList());
        assertEquals("thrust: " + sentence + ".", plan.facts().get(0).english());
        assertEquals(List.of(), plan.shortages());
    }

    private static ClassPractice ways(BothNew choice, int posts) {
        return new ClassPractice(LeftOver.THREES, choice, posts, First.TURNS);
    }

    /** Of nine, one is with the instructor if somebody else watches; else a third joins a pair. */
    @Test
    void an_odd_one_is_helped_only_if_somebody_is_left_to_watch() {
        List<String> two = new ArrayList<>();
        Classes.of(9, 0)
                .assistants("Marlow")
                .rounds(1)
                .plan()
                .rounds()
                .get(0)
                .groups()
                .forEach(group -> two.add(group.kind().word() + group.people().size()));
        assertEquals(1, two.stream().filter("helped1"::equals).count());
        assertEquals(4, two.stream().filter("watched2"::equals).count());
        List<Group> one = Classes.of(9, 0).rounds(1).plan().rounds().get(0).groups();
        assertEquals(4, one.size());
        assertTrue(one.stream().allMatch(group -> group.eyes().isPresent()));
    }

    /** Two posts for one pair of eyes: of eight, threes take six; two are left, alone. */
    @Test
    void more_than_can_be_watched_are_alone_and_that_is_a_shortage() {
        PairingPlan plan =
                Classes.of(8, 0).rounds(1).ways(ways(BothNew.NEEDED, 2)).plan();
        assertEquals(
                2,
                plan.rounds().get(0).groups().stream()
                        .filter(group -> group.kind() == Group.Kind.SOLO)
                        .count());
        assertEquals(1, plan.shortages().size());
    }

    @Test
    void never_is_never() {
        PairingPlan plan =
                Classes.of(6, 0).rounds(2).ways(ways(BothNew.NEVER, 12)).plan();
        assertTrue(plan.rounds().stream()
                .flatMap(round -> round.groups().stream())
                .allMatch(group -> group.people().size() == 1));
    }

    /** Seven new, three know it: as a rule three threes and one with the instructor; wanted: two pairs that he watches. */
    @Test
    void wanted_goes_before_threes() {
        PairingPlan usual = Classes.of(7, 3).rounds(1).plan();
        assertEquals(
                3,
                usual.rounds().get(0).groups().stream()
                        .filter(group -> group.kind() == Group.Kind.THREE)
                        .count());
        PairingPlan wanted =
                Classes.of(7, 3).rounds(1).ways(ways(BothNew.WANTED, 12)).plan();
        assertEquals(
                2,
                wanted.rounds().get(0).groups().stream()
                        .filter(group -> group.kind() == Group.Kind.WATCHED)
                        .count());
        assertEquals(5, wanted.rounds().get(0).groups().size());
    }

    /** Marlow may not look at A0, so the instructor does in each round. */
    @Test
    void whoever_is_kept_apart_from_somebody_is_not_watched_by_him() {
        PairingPlan plan = Classes.of(8, 0)
                .assistants("Marlow")
                .apart("Marlow", "A0")
                .rounds(6)
                .plan();
        assertEquals(6, watched(plan, "instructor").get("A0"));
    }
}
