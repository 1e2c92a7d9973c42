package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.drillwright.plan.roster.BothNew;
import org.drillwright.plan.roster.ClassPractice;
import org.drillwright.plan.roster.Person;
import org.drillwright.register.Entry;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

class WhyTest {

    private static List<String> why(Classes classes, String one, String other) {
        return Pairing.of(classes.request()).why(one, other).stream()
                .map(Message::english)
                .toList();
    }

    @Test
    void those_kept_apart() {
        assertEquals(
                List.of("They are kept apart: the roster says so."),
                why(Classes.of(0, 4).apart("B1", "B0").rounds(2), "B0", "B1"));
    }

    @Test
    void two_who_are_both_new() {
        assertEquals(
                List.of("Both are new to thrust, so neither could help the other."),
                why(Classes.of(2, 2).rounds(2), "A0", "A1"));
    }

    @Test
    void somebody_who_is_not_there() {
        assertEquals(
                List.of("Zed doesn't work in a pair in the rounds planned."),
                why(Classes.of(0, 4).rounds(1), "B0", "Zed"));
    }

    @Test
    void a_pair_that_cannot_be_spared() {
        assertEquals(
                List.of(
                        "They work together in round 1.",
                        "Round 1: the round can't be filled without these two as a pair."),
                why(Classes.of(1, 1).rounds(1), "A0", "B0"));
    }

    @Test
    void a_pair_that_worked_together_last_time() {
        Classes classes = Classes.of(0, 4)
                .past(Entry.workedWith(LocalDate.of(2026, 9, 7), "B0", "thrust", "B1"))
                .rounds(1);
        assertEquals(
                List.of("They could meet. Putting them together in round 1 would be worse by 4 in repeats of past"
                        + " classes, and no better in anything more important."),
                why(classes, "B0", "B1"));
    }

    @Test
    void a_pair_that_chance_has_parted() {
        List<String> why = List.of("B1", "B2", "B3").stream()
                .map(other -> why(Classes.of(0, 4).rounds(1), "B0", other).get(0))
                .toList();
        assertEquals(
                1, why.stream().filter("They work together in round 1."::equals).count());
        assertEquals(
                2,
                why.stream()
                        .filter(("They could meet. Putting them together in round 1 would be just as good (the"
                                + " roster's order decided).")::equals)
                        .count());
    }

    /** As they are 1 and 1, squared 2; otherwise 7 and 7, squared 98. */
    @Test
    void partners_far_apart_in_skill() {
        List<Person> people = List.of(
                Person.named("Ash").withSkill(1),
                Person.named("Bo").withSkill(2),
                Person.named("Cy").withSkill(8),
                Person.named("Dee").withSkill(9));
        assertEquals(
                List.of("They could meet. Putting them together in round 1 would be worse by 96 in the sum of squared"
                        + " gaps in skill, and no better in anything more important."),
                why(Classes.of(people).training().rounds(1), "Ash", "Cy"));
    }

    @Test
    void a_pair_apart_wherever_someone_is_not_told_of_twice() {
        Set<String> told = Set.copyOf(why(
                Classes.of(2, 2).ways(ClassPractice.USUAL.with(BothNew.NEVER)).drills("thrust", "cut"), "A0", "A1"));
        assertTrue(told.stream().anyMatch(one -> one.startsWith("Both are new to thrust, cut")));
    }
}
