package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.drillwright.plan.kept.Worked;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.register.Entry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The smallest classes and the largest. */
class ClassSizesTest {

    @Test
    void nobody() {
        PairingPlan plan = Classes.of(0, 0).rounds(3).plan();
        assertEquals(
                List.of(List.of(), List.of(), List.of()),
                plan.rounds().stream().map(Round::groups).toList());
        assertTrue(plan.verdict().orElseThrow().isProvedBest());
    }

    @Test
    void one_works_with_the_instructor_or_alone() {
        assertEquals(
                List.of(new Group(Group.Kind.HELPED, 1, List.of("A0"), Optional.of("instructor"))),
                Classes.of(1, 0).rounds(1).plan().rounds().get(0).groups());
        assertEquals(
                List.of(new Group(Group.Kind.SOLO, 0, List.of("A0"), Optional.empty())),
                Classes.of(1, 0).noInstructor().rounds(1).plan().rounds().get(0).groups());
    }

    @Test
    void two_meet_every_time() {
        PairingPlan plan = Classes.of(1, 1).rounds(40).plan();
        assertEquals(40, plan.meetings("A0", "B0"));
        assertEquals(40 * 39 / 2, plan.verdict().orElseThrow().bound().of(Objective.REPEATS));
        assertTrue(plan.verdict().orElseThrow().isProvedBest());
    }

    @Test
    void no_rounds() {
        assertEquals(List.of(), Classes.of(3, 3).rounds(0).plan().rounds());
    }

    @ParameterizedTest(name = "{0} new, {1} who know, {2} rounds, walking {3}")
    @CsvSource({"66, 134, 20, true", "66, 133, 6, false", "5, 6, 40, true", "5, 6, 40, false"})
    void large_classes_and_long_evenings(int fresh, int knowing, int rounds, boolean walk) {
        Classes classes = Classes.of(fresh, knowing).rounds(rounds);
        PairingPlan plan = (walk ? classes.walk() : classes).plan();
        Set<String> all = new TreeSet<>();
        Set<String> novices = new TreeSet<>();
        IntStream.range(0, fresh).forEach(at -> novices.add("A" + at));
        all.addAll(novices);
        IntStream.range(0, knowing).forEach(at -> all.add("B" + at));
        if ((fresh + knowing) % 2 == 1) {
            all.add("instructor");
        }
        TableChecker checker = new TableChecker(all, novices).rounds(TableChecker.text(plan));
        assertEquals(List.of(), checker.faults());
        assertEquals(rounds, plan.rounds().size());
        if (rounds < 40) {
            assertEquals(0, checker.repeats());
            assertTrue(plan.verdict().orElseThrow().isProvedBest());
        }
    }

    /** Nineteen people, twenty weeks of six rounds, six classes remembered: from 5 to 8 turns each, 120 in all. */
    @Test
    void the_instructors_turns_are_fair_over_the_weeks() {
        Classes classes = Classes.of(6, 13).rounds(6);
        int[] turns = new int[19];
        for (int week = 0; week < 20; week++) {
            PairingPlan plan = classes.plan();
            for (Entry entry : new Worked(List.of(), plan.rounds())
                    .entries(LocalDate.of(2026, 1, 5).plusWeeks(week))) {
                classes.past(entry);
                if (entry.with().equals("instructor")) {
                    String name = entry.person();
                    turns[Integer.parseInt(name.substring(1)) + (name.startsWith("A") ? 0 : 6)]++;
                }
            }
        }
        assertEquals(120, IntStream.of(turns).sum());
        assertTrue(IntStream.of(turns).allMatch(had -> 5 <= had && had <= 8), Arrays.toString(turns));
    }
}
