package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.rounds.Method;
import org.drillwright.plan.rounds.Objective;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The movements that can be walked, for every small class, and the bounds that go with them. */
class ClosedFormsTest {

    private static Set<String> people(int fresh, int knowing) {
        Set<String> people = new TreeSet<>();
        for (int at = 0; at < fresh; at++) {
            people.add("A" + at);
        }
        for (int at = 0; at < knowing; at++) {
            people.add("B" + at);
        }
        return people;
    }

    private static TableChecker checked(PairingPlan plan, int fresh, int knowing) {
        return new TableChecker(people(fresh, knowing), people(fresh, 0)).rounds(TableChecker.text(plan));
    }

    @Test
    void as_many_rounds_as_know_the_drill_pass_without_repeat() {
        int rings = 0;
        for (int knowing = 1; knowing <= 13; knowing++) {
            for (int fresh = 1; fresh <= knowing; fresh++) {
                if ((fresh + knowing) % 2 == 0) {
                    PairingPlan plan =
                            Classes.of(fresh, knowing).walk().rounds(knowing).plan();
                    TableChecker checker = checked(plan, fresh, knowing);
                    assertEquals(List.of(), checker.faults());
                    assertEquals(0, checker.repeats());
                    assertTrue(
                            plan.method() == Method.RING || fresh == knowing,
                            () -> plan.method().words().english());
                    rings += plan.method() == Method.RING ? 1 : 0;
                }
            }
        }
        assertEquals(36, rings);
    }

    /** Of n people none of whom is new, everyone meets everyone in n - 1 rounds. */
    @ParameterizedTest
    @CsvSource({"2", "4", "6", "8", "10", "12", "20"})
    void where_nobody_is_new_everyone_meets_everyone(int people) {
        PairingPlan plan = Classes.of(0, people).walk().rounds(people - 1).plan();
        TableChecker checker = checked(plan, 0, people);
        assertEquals(List.of(), checker.faults());
        assertEquals(people * (people - 1) / 2, checker.pairs());
        assertEquals(0, checker.repeats());
    }

    @Test
    void gaps_are_spread_so_that_nobody_has_two_turns_more_than_another() {
        for (int fresh = 2; fresh <= 12; fresh++) {
            for (int knowing = 1; knowing < fresh; knowing++) {
                for (int rounds = 1; rounds <= fresh; rounds++) {
                    PairingPlan plan = Classes.of(fresh, knowing)
                            .walk()
                            .noInstructor()
                            .leftOver(LeftOver.SOLO)
                            .rounds(rounds)
                            .plan();
                    assertEquals(Method.TWO_LINES, plan.method());
                    assertEquals(0, plan.verdict().orElseThrow().cost().of(Objective.REPEATS));
                    assertEquals(
                            plan.verdict().orElseThrow().bound().of(Objective.BLANKS),
                            plan.verdict().orElseThrow().cost().of(Objective.BLANKS),
                            fresh + " new, " + knowing + " know, " + rounds + " rounds");
                }
            }
        }
    }

    /** The most rounds without repeat, found by trying all tables of these sizes. */
    @ParameterizedTest(name = "{0} people, {1} new: {2} rounds")
    @CsvSource({"4,2,2", "6,0,5", "6,1,5", "6,2,4", "6,3,3", "8,0,7", "8,1,7", "8,2,6", "8,3,5", "8,4,4"})
    void the_most_rounds_without_repeat(int people, int fresh, int most) {
        PairingPlan last = Classes.of(fresh, people - fresh).rounds(most).plan();
        assertEquals(0, checked(last, fresh, people - fresh).repeats());
        assertTrue(last.verdict().orElseThrow().isProvedBest());
        PairingPlan beyond = Classes.of(fresh, people - fresh).rounds(most + 1).plan();
        assertTrue(checked(beyond, fresh, people - fresh).repeats() > 0);
        assertTrue(
                beyond.verdict().orElseThrow().bound().of(Objective.REPEATS) > 0,
                "the bound knows that a repeat can't be avoided");
    }

    @Test
    void the_odd_one_out_works_with_the_instructor_by_turns() {
        PairingPlan plan = Classes.of(4, 7).walk().rounds(6).plan();
        Set<String> all = people(4, 7);
        TableChecker checker = new TableChecker(with(all, "instructor"), people(4, 0)).rounds(TableChecker.text(plan));
        assertEquals(List.of(), checker.faults());
        assertEquals(0, checker.repeats());
        assertTrue(all.stream().allMatch(name -> checker.met(name, "instructor") <= 1));
        assertEquals(
                "11 students is an odd number: one is left over in each round and works with the instructor, in turn.",
                plan.shortages().get(0).sentence().english());
    }

    private static Set<String> with(Set<String> names, String more) {
        Set<String> all = new TreeSet<>(names);
        all.add(more);
        return all;
    }

    /** Two lines serve several drills if all who are new to one of them fit into the line that stands. */
    @Test
    void two_lines_serve_drills_that_change() {
        var people = new java.util.ArrayList<>(Classes.named(Set.of("cut"), "A0"));
        people.addAll(Classes.named(Set.of("thrust"), "A1"));
        people.addAll(Classes.named(Set.of("cut", "thrust"), "B0", "B1", "B2", "B3"));
        PairingPlan plan =
                Classes.of(people).walk().drills("thrust", "thrust", "cut").plan();
        assertEquals(Method.TWO_LINES, plan.method());
        assertEquals(List.of(), checked(plan, 2, 4).faults());
    }
}
