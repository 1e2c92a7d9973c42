package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.rounds.Method;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.report.plan.ChangeWords;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

/** A class worked out by hand: Ash, Bo and Cy are new; Dee, Eli, Fay, Gus and Hal know the drill. All are invented. */
class WorkedExampleTest {

    private static final Set<String> FRESH = Set.of("Ash", "Bo", "Cy");
    private static final Set<String> ALL = Set.of("Ash", "Bo", "Cy", "Dee", "Eli", "Fay", "Gus", "Hal");

    private static Classes eight() {
        List<Person> people = new ArrayList<>(Classes.named(Set.of(), "Ash", "Bo", "Cy"));
        people.addAll(Classes.named(Set.of(Classes.DRILL), "Dee", "Eli", "Fay", "Gus", "Hal"));
        return Classes.of(people).walk();
    }

    /** The ring has places 0 to 4; Ash stands at 0, Bo at 2, Cy at 3; places 1 and 4 face each other. */
    @Test
    void the_ring_moves_as_worked_out_by_hand() {
        PairingPlan plan = eight().rounds(5).plan();
        assertEquals(Method.RING, plan.method());
        assertArrayEquals(
                new String[] {
                    "Ash-Dee Eli-Hal Bo-Fay Cy-Gus",
                    "Ash-Hal Dee-Gus Bo-Eli Cy-Fay",
                    "Ash-Gus Fay-Hal Bo-Dee Cy-Eli",
                    "Ash-Fay Eli-Gus Bo-Hal Cy-Dee",
                    "Ash-Eli Dee-Fay Bo-Gus Cy-Hal"
                },
                Arrays.stream(TableChecker.text(plan))
                        .map(WorkedExampleTest::byName)
                        .toArray(String[]::new));
        TableChecker checker = new TableChecker(ALL, FRESH).rounds(TableChecker.text(plan));
        assertEquals(List.of(), checker.faults());
        assertEquals(20, checker.pairs());
        assertEquals("Proved best.", plan.verdict().orElseThrow().sentence().english());
    }

    /** Whoever leads first stands first; here each two stand by their names. */
    private static String byName(String round) {
        return Arrays.stream(round.split(" "))
                .map(pair -> Arrays.stream(pair.split("-")).sorted().collect(Collectors.joining("-")))
                .collect(Collectors.joining(" "));
    }

    @Test
    void a_sixth_round_must_repeat() {
        PairingPlan plan = eight().rounds(6).plan();
        TableChecker checker = new TableChecker(ALL, FRESH).rounds(TableChecker.text(plan));
        assertEquals(List.of(), checker.faults());
        // Each of the three who are new has met all five: three pairs meet again.
        assertEquals(3, checker.repeats());
        assertEquals(3, plan.verdict().orElseThrow().bound().of(Objective.REPEATS));
    }

    @Test
    void in_two_lines_half_the_class_stays_and_the_others_move_one_post_up() {
        PairingPlan plan = eight().rounds(4).plan();
        assertEquals(Method.TWO_LINES, plan.method());
        assertEquals(
                List.of(),
                new TableChecker(ALL, FRESH).rounds(TableChecker.text(plan)).faults());
        assertEquals(
                "Line A stays, from post 1 onwards: Ash, Bo, Cy, Dee.",
                ChangeWords.of(plan.changes()).get(0).english());
        for (int round = 2; round <= 4; round++) {
            assertEquals(Set.of("Eli", "Fay", "Gus", "Hal"), Set.copyOf(plan.movers(round)));
            for (String walker : List.of("Eli", "Fay", "Gus", "Hal")) {
                int before = place(plan, round - 1, walker);
                assertEquals(before == 4 ? 1 : before + 1, place(plan, round, walker));
            }
        }
    }

    private static int place(PairingPlan plan, int round, String person) {
        return plan.rounds().get(round - 1).groupOf(person).orElseThrow().place();
    }

    /** Seven new, three who know it: at most three safe pairs; over seven rounds it comes out even. */
    @Test
    void a_ring_with_gaps_is_perfectly_fair() {
        PairingPlan plan = Classes.of(7, 3).walk().noInstructor().rounds(7).plan();
        assertEquals(Method.TWO_LINES, plan.method());
        for (int one = 0; one < 7; one++) {
            String fresh = "A" + one;
            for (String knowing : List.of("B0", "B1", "B2")) {
                assertTrue(plan.meetings(fresh, knowing) >= 1);
            }
        }
        assertEquals(
                "thrust: 7 are new to this drill and 3 know it: at most 3 safe pairs; 4 remain.",
                plan.facts().get(0).english());
        assertTrue(plan.facts().stream()
                .map(Message::english)
                .toList()
                .contains("In 7 rounds everyone who is new works once with everyone who knows the drill, and"
                        + " has 4 turns"
                        + " without a partner of their own."));
    }

    @Test
    void the_choices_are_told_in_numbers() {
        PairingPlan plan = Classes.of(7, 3).walk().rounds(7).plan();
        assertEquals(
                List.of(
                        "thrust: 7 are new to this drill and 3 know it: at most 3 safe pairs; 4 remain.",
                        "Choice solo: 1 works with the instructor, 3 do solo work or watch.",
                        "Choice threes: 3 threes, each with one who knows the drill, and 1 works with the"
                                + " instructor: everyone works with someone who knows it.",
                        // The instructor has an eye on them.
                        "Choice both-new: 2 pairs of two who are both new."),
                plan.facts().stream().map(Message::english).toList().subList(0, 4));
        assertTrue(IntStream.range(0, 7)
                .allMatch(round -> plan.rounds().get(round).groups().stream()
                        .noneMatch(group -> group.kind() == Group.Kind.SOLO)));
    }

    @Test
    void nine_new_and_four_who_know() {
        assertEquals(
                "9 are new to this drill and 4 know it: at most 4 safe pairs; 5 remain.",
                Classes.of(9, 4).rounds(1).plan().shortages().get(0).sentence().english());
    }
}
