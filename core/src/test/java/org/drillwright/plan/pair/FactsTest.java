package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.roster.Person;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

/** What an instructor is told of a plan, each sentence worked out by hand. */
class FactsTest {

    @Test
    void a_plan_in_which_all_is_well_tells_nothing() {
        assertEquals(List.of(), Classes.of(2, 2).rounds(2).plan().facts());
    }

    /** Bo and Cy may not work with Dee, the only one who knows the drill. */
    @Test
    void two_new_ones_who_work_together_are_named_in_each_round() {
        List<Person> people = new ArrayList<>(Classes.named(Set.of(), "Ash", "Bo", "Cy"));
        people.addAll(Classes.named(Set.of(Classes.DRILL), "Dee"));
        List<String> facts = Classes.of(people)
                .apart("Bo", "Dee")
                .apart("Cy", "Dee")
                .noInstructor()
                .leftOver(LeftOver.BOTH_NEW)
                .rounds(2)
                .plan()
                .facts()
                .stream()
                .map(Message::english)
                .toList();
        assertEquals("thrust: 3 are new to this drill and 1 knows it: at most 1 safe pair; 2 remain.", facts.get(0));
        assertEquals(
                List.of(
                        "Round 1: Bo and Cy are both new to thrust; nobody who knows it is left for them.",
                        "Round 2: Cy and Bo are both new to thrust; nobody who knows it is left for them."),
                facts.stream().filter(fact -> fact.startsWith("Round ")).toList());
    }

    @Test
    void what_is_the_same_for_two_drills_is_said_once() {
        assertEquals(
                List.of("thrust, cut: 5 students is an odd number: one is left over in each round and works with the"
                        + " instructor, in turn."),
                Classes.of(0, 5).drills("thrust", "cut").training().plan().facts().stream()
                        .map(Message::english)
                        .toList()
                        .subList(0, 1));
    }

    /** Two meet three times: the second meeting counts 1, the third 2 more. */
    @Test
    void those_who_meet_again_today_are_counted() {
        assertEquals(
                List.of("One pair meets more than once today, as there are more rounds than permitted partners;"
                        + " fewer isn't possible."),
                Classes.of(0, 2).rounds(3).plan().facts().stream()
                        .map(Message::english)
                        .toList());
    }

    /** Three who are apart of each other, and only one who knows the drill: nobody can join the one pair. */
    @Test
    void a_three_that_nobody_may_join_is_no_choice() {
        List<Person> people = new ArrayList<>(Classes.named(Set.of(), "Ash", "Bo", "Cy"));
        people.addAll(Classes.named(Set.of(Classes.DRILL), "Dee"));
        List<String> facts = Classes.of(people)
                .apart("Ash", "Bo")
                .apart("Ash", "Cy")
                .apart("Bo", "Cy")
                .noInstructor()
                .rounds(1)
                .plan()
                .facts()
                .stream()
                .map(Message::english)
                .toList();
        assertEquals(
                List.of(
                        "thrust: 3 are new to this drill and 1 knows it: at most 1 safe pair; 2 remain.",
                        "Choice solo: all 2 do solo work or watch."),
                facts);
    }

    /** Marlow may work with none of the three; so nobody is said to work with Marlow. */
    @Test
    void a_helper_from_whom_all_are_apart_helps_nobody() {
        List<String> facts = Classes.of(3, 1)
                .noInstructor()
                .assistants("Marlow")
                .apart("A0", "Marlow")
                .apart("A1", "Marlow")
                .apart("A2", "Marlow")
                .apart("B0", "Marlow")
                .rounds(1)
                .plan()
                .facts()
                .stream()
                .map(Message::english)
                .toList();
        assertEquals(
                List.of(
                        "thrust: 3 are new to this drill and 1 knows it: at most 1 safe pair; 2 remain.",
                        "Choice solo: all 2 do solo work or watch.",
                        "Choice threes: 1 three, each with one who knows the drill; 1 does solo work."),
                facts);
    }

    @Test
    void in_training_a_missing_skill_number_is_told() {
        List<Person> some = List.of(Person.named("Ash").withSkill(3), Person.named("Bo"));
        List<Person> all =
                List.of(Person.named("Ash").withSkill(3), Person.named("Bo").withSkill(4));
        String told = "Not everyone has a skill number, so levels were compared instead.";
        assertEquals(
                List.of(told),
                Classes.of(some).training().rounds(1).plan().facts().stream()
                        .map(Message::english)
                        .toList());
        assertEquals(List.of(), Classes.of(all).training().rounds(1).plan().facts());
    }

    @Test
    void in_learning_nobody_needs_a_skill_number() {
        assertEquals(List.of(), Classes.of(1, 1).rounds(1).plan().facts());
    }

    /**
     * Seven are new; three and the instructor go round a ring of seven places. In seven rounds each who is new meets each of
     * the four once, and has 7 - 4 turns without.
     */
    @Test
    void the_instructors_turn_counts_in_the_ring_with_gaps() {
        String fair =
                "In 7 rounds everyone who is new works once with everyone who knows the drill, and has 3 turns as a"
                        + " third.";
        assertTrue(Classes.of(7, 3).walk().rounds(7).plan().facts().stream()
                .map(Message::english)
                .toList()
                .contains(fair));
        assertTrue(Classes.of(7, 3).walk().rounds(6).plan().facts().stream()
                .map(Message::english)
                .noneMatch(fact -> fact.startsWith("In ")));
    }

    /** In training nobody counts as new: the five are only an odd number. */
    @Test
    void in_training_an_odd_number_is_no_lack_of_those_who_know_the_drill() {
        Classes classes = Classes.of(4, 1).training().rounds(1);
        assertEquals(
                "5 students is an odd number: one is left over in each round and works with the instructor, in turn.",
                classes.plan().shortages().get(0).sentence().english());
        assertEquals(0, classes.plan().shortages().get(0).fresh());
    }
}
