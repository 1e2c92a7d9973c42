package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.roster.Person;
import org.drillwright.register.Entry;
import org.drillwright.report.plan.ChangeWords;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Evenings worked out by hand: drill P is new to Gus and Hal, drill Q to Fay, Gus and Hal. All people are invented. */
class WalkedEveningTest {

    private static final List<String> EIGHT = List.of("Ash", "Bo", "Cy", "Dee", "Eli", "Fay", "Gus", "Hal");

    private static Classes evening(Set<String> newToQ, String... drills) {
        List<Person> people = new ArrayList<>();
        for (String name : EIGHT) {
            Set<String> knows = new HashSet<>(Set.of("R"));
            if (!Set.of("Gus", "Hal").contains(name)) {
                knows.add("P");
            }
            if (!newToQ.contains(name)) {
                knows.add("Q");
            }
            people.add(Person.named(name).withKnown(knows));
        }
        return Classes.of(people).walk().drills(drills);
    }

    private static Set<Set<String>> pairs(PairingPlan plan) {
        return plan.rounds().stream()
                .flatMap(round -> round.groups().stream())
                .filter(group -> group.people().size() == 2)
                .map(group -> Set.copyOf(group.people()))
                .collect(Collectors.toSet());
    }

    /** Eli and Fay are kept apart, so with Gus and Hal they are the four of line A; Ash, Bo, Cy and Dee are line B. */
    @Test
    void one_forming_serves_two_drills() {
        Classes classes = evening(Set.of("Fay", "Gus", "Hal"), "P", "P", "Q", "Q")
                .noInstructor()
                .apart("Eli", "Fay");
        PairingPlan plan = classes.plan();
        Walk walk = plan.walks().get(0);
        assertEquals(1, plan.walks().size());
        assertEquals(Set.of("Eli", "Fay", "Gus", "Hal"), Set.copyOf(walk.stays()));
        assertEquals(Set.of("Ash", "Bo", "Cy", "Dee"), Set.copyOf(walk.moves()));
        assertEquals(16, pairs(plan).size());
        assertEquals("A", walk.line("Eli"));
        WalkChoice one = Pairing.of(classes.request()).choices().get(0);
        assertEquals(
                List.of("one forming", "nobody changes lines", "nobody meets again", "1"),
                List.of(
                        one.name().english(),
                        one.effort().english(),
                        one.price().english(),
                        one.word()));
        assertTrue(one.usual());
    }

    /**
     * Fay, Gus and Hal are one line with somebody else. Ash met Fay and Gus last week, Bo met Fay: with Ash in their line Bo
     * meets Fay again, for 4; with Bo it would be two meetings, with anybody else three. Free, nobody need.
     */
    @Test
    void of_the_lines_that_there_can_be_the_best_is_known() {
        LocalDate lastWeek = LocalDate.of(2026, 9, 7);
        Classes classes = evening(Set.of("Fay", "Gus", "Hal"), "P", "P", "Q", "Q")
                .noInstructor()
                .past(Entry.workedWith(lastWeek, "Ash", "R", "Fay"))
                .past(Entry.workedWith(lastWeek, "Ash", "R", "Gus"))
                .past(Entry.workedWith(lastWeek, "Bo", "R", "Fay"));
        PairingPlan plan = classes.plan();
        assertEquals(plan.walks().get(0).line("Fay"), plan.walks().get(0).line("Ash"));
        assertEquals(
                "Proved best in everything more important than repeats of past classes; in that, another plan could be"
                        + " better by 4 at most; of two lines in which everybody may work with everybody opposite, none"
                        + " are better.",
                plan.verdict().orElseThrow().sentence().english());
    }

    /** Ash and Bo are new to Q too, and nobody is kept apart: five in one line, and two who help fill the other. */
    @Test
    void two_who_help_fill_the_second_line() {
        PairingPlan plan = evening(Set.of("Ash", "Bo", "Fay", "Gus", "Hal"), "P", "P", "Q", "Q", "Q")
                .assistants("Marlow")
                .plan();
        Walk walk = plan.walks().get(0);
        assertEquals(1, plan.walks().size());
        assertEquals(Set.of("Ash", "Bo", "Fay", "Gus", "Hal"), Set.copyOf(walk.stays()));
        assertEquals(Set.of("Cy", "Dee", "Eli", "instructor", "Marlow"), Set.copyOf(walk.moves()));
        assertEquals(
                "Helpers join the lines so that everyone can walk; the places are the best that were found.",
                plan.verdict().orElseThrow().sentence().english());
    }

    /** With Eli and Fay kept apart as well six stand against two and two who help: Q is read, R is walked. */
    @Test
    void where_no_forming_serves_it_is_said_why_and_that_drill_alone_is_read() {
        PairingPlan plan = evening(Set.of("Ash", "Bo", "Fay", "Gus", "Hal"), "R", "R", "R", "Q", "Q")
                .assistants("Marlow")
                .apart("Eli", "Fay")
                .plan();
        assertEquals(
                "Q: no forming, everyone reads the sheet. 6 have to be in one line, as they are new to it or kept"
                        + " apart: the other 2 and the 2 who can help don't fill the second line.",
                ChangeWords.of(plan.changes()).get(0).english());
        assertEquals(
                List.of(List.of(1, 3)),
                plan.walks().stream()
                        .map(walk -> List.of(walk.from(), walk.to()))
                        .toList());
        assertEquals(
                List.of("Q"),
                Pairing.of(evening(Set.of("Ash", "Bo", "Fay", "Gus", "Hal"), "R", "R", "R", "Q", "Q")
                                .assistants("Marlow")
                                .apart("Eli", "Fay")
                                .request())
                        .choices()
                        .get(0)
                        .read());
    }

    /** Seven: one post has nobody opposite, and by turns everybody of line A is before it. */
    @Test
    void a_rest_passes_round_by_itself() {
        List<Person> seven = new ArrayList<>(Classes.named(Set.of("R"), "Ash", "Bo", "Cy", "Dee", "Eli", "Fay", "Gus"));
        PairingPlan plan = Classes.of(seven)
                .walk()
                .noInstructor()
                .leftOver(LeftOver.SOLO)
                .drills("R", "R", "R", "R")
                .plan();
        Walk walk = plan.walks().get(0);
        assertTrue(walk.hasRest());
        Set<String> rested = plan.rounds().stream()
                .flatMap(round -> round.groups().stream())
                .filter(group -> group.kind() == Group.Kind.SOLO)
                .map(group -> group.people().get(0))
                .collect(Collectors.toSet());
        assertEquals(Set.copyOf(walk.stays()), rested);
        assertTrue(ChangeWords.of(plan.changes()).stream()
                .map(Message::english)
                .toList()
                .contains("Whoever has nobody opposite rests for that round."));
    }

    /** What is asked for is made; more formings than drills can't be. */
    @ParameterizedTest(name = "{0}: {1} formings")
    @CsvSource({"ONE,1", "TWO,2", "FREE,0"})
    void as_many_formings_as_are_asked_for(Movement movement, int formings) {
        PairingRequest request = evening(Set.of("Fay", "Gus", "Hal"), "P", "P", "Q", "Q")
                .request()
                .moving(movement);
        assertEquals(formings, Pairing.of(request).plan().walks().size());
    }

    /** Eight people and six rounds of two drills: in one forming of four two rounds come twice, which is eight pairs. */
    @Test
    void the_price_of_each_way_is_counted_in_its_plan() {
        Classes classes = evening(Set.of(), "Q", "Q", "Q", "R", "R", "R").noInstructor();
        List<WalkChoice> choices = Pairing.of(classes.request()).choices();
        assertEquals(
                List.of("one forming", "two formings", "free"),
                choices.stream().map(choice -> choice.name().english()).toList());
        assertEquals(
                "8 pairs meet again, in rounds 5 and 6", choices.get(0).price().english());
        assertEquals("nobody meets again", choices.get(2).price().english());
        for (WalkChoice choice : choices) {
            Movement asked =
                    choice.formings() == 0 ? Movement.FREE : choice.formings() == 1 ? Movement.ONE : Movement.TWO;
            PairingPlan plan = Pairing.of(classes.request().moving(asked)).plan();
            Map<Set<String>, Integer> met = new HashMap<>();
            plan.rounds().stream()
                    .flatMap(round -> round.groups().stream())
                    .forEach(group -> met.merge(Set.copyOf(group.people()), 1, Integer::sum));
            assertEquals(
                    choice.pairs(),
                    met.values().stream().filter(times -> times > 1).count());
            long changing = plan.walks().size() < 2
                    ? 0
                    : EIGHT.stream()
                            .filter(name -> !plan.walks()
                                    .get(0)
                                    .line(name)
                                    .equals(plan.walks().get(1).line(name)))
                            .count();
            assertEquals(choice.change().people(), changing);
        }
        assertEquals(1, choices.stream().filter(WalkChoice::usual).count());
    }
}
