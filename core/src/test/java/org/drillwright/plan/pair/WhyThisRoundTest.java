package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.drillwright.plan.roster.LeftOver;
import org.drillwright.plan.roster.Movement;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.rounds.CostVector;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.plan.rounds.Solution;
import org.drillwright.plan.walk.Walks;
import org.drillwright.register.Entry;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

/** What is answered about single rounds; all that a change would cost is worked by hand. */
class WhyThisRoundTest {

    private static final LocalDate LAST = LocalDate.of(2026, 9, 7);

    private static List<String> why(Classes classes, String one, String other) {
        return Pairing.of(classes.request()).why(one, other).stream()
                .map(Message::english)
                .toList();
    }

    private static Entry met(LocalDate day, String one, String other) {
        return Entry.workedWith(day, one, "thrust", other);
    }

    @Test
    void one_person_is_no_pair() {
        assertEquals(List.of("That is the same person."), why(Classes.of(0, 2).rounds(1), "B0", "B0"));
    }

    @Test
    void a_round_that_was_played_stays_as_it_was() {
        assertEquals(
                List.of(
                        "They work together in round 1, 2.",
                        "Round 1: it has already been worked.",
                        "Round 2: the round can't be filled without these two as a pair."),
                why(Classes.of(0, 2).noInstructor().rounds(2).played("B0-B1"), "B0", "B1"));
    }

    /** Ash 1, Bo 2, Cy 8, Dee 9: as they are the gaps are 1 and 1, squared 2; otherwise 7 and 7, squared 98, or 8 and 6. */
    @Test
    void parting_a_pair_costs_what_the_next_best_round_costs_more() {
        List<Person> people = List.of(
                Person.named("Ash").withSkill(1),
                Person.named("Bo").withSkill(2),
                Person.named("Cy").withSkill(8),
                Person.named("Dee").withSkill(9));
        assertEquals(
                List.of(
                        "They work together in round 1.",
                        "Round 1: separating them would be worse by 96 in the sum of squared gaps in skill,"
                                + " and no better in anything more important."),
                why(Classes.of(people).training().rounds(1), "Ash", "Bo"));
    }

    /** All three know it: one works with both others, and these not with each other. */
    @Test
    void the_two_at_the_ends_of_a_three_do_not_work_together() {
        Classes classes = Classes.of(0, 3).noInstructor().rounds(1);
        List<String> told = new ArrayList<>();
        for (String pair : List.of("B0 B1", "B0 B2", "B1 B2")) {
            told.addAll(why(classes, pair.split(" ")[0], pair.split(" ")[1]));
        }
        assertEquals(
                2,
                told.stream().filter("They work together in round 1."::equals).count());
        assertEquals(
                1,
                told.stream()
                        .filter(
                                "They are in the same three in round 1, but each works with the one in the middle."
                                        ::equals)
                        .count());
    }

    /** Three are new and one knows it: any two of the three could be the ones who work together. */
    @Test
    void two_new_ones_who_were_put_together_are_told_so() {
        Classes classes =
                Classes.of(3, 1).noInstructor().leftOver(LeftOver.BOTH_NEW).rounds(1);
        Group both = classes.plan().rounds().get(0).groups().stream()
                .filter(group -> group.kind() == Group.Kind.BOTH_NEW)
                .findFirst()
                .orElseThrow();
        assertEquals(
                List.of(
                        "They work together in round 1.",
                        "Round 1: separating them would be just as good (the roster's order decided)."),
                why(classes, both.people().get(0), both.people().get(1)));
    }

    /** Both are new to the thrust; A1 knows the cut. They worked together in the last class, which costs 4. */
    @Test
    void two_who_are_both_new_to_one_drill_could_meet_on_the_other() {
        List<Person> people = new ArrayList<>(Classes.named(Set.of(), "A0"));
        people.addAll(Classes.named(Set.of("cut"), "A1"));
        people.addAll(Classes.named(Set.of("thrust", "cut"), "B0", "B1"));
        assertEquals(
                List.of(
                        "Both are new to thrust, so neither could help the other.",
                        "They could meet. Putting them together in round 2 would be worse by 4 in repeats of past"
                                + " classes, and no better in anything more important."),
                why(Classes.of(people).drills("thrust", "cut").past(met(LAST, "A0", "A1")), "A0", "A1"));
    }

    /**
     * Four can be paired in three ways. B0 with B1 costs 4, met in the last class; B0 with B3 costs 3, met in the one before;
     * B0 with B2 costs nothing. The two rounds take the last two ways. B0 with B1 instead of the round of B0 and B3 costs 1
     * more, instead of the other 4 more.
     */
    @Test
    void the_round_is_named_in_which_it_costs_least() {
        Classes classes = Classes.of(0, 4)
                .noInstructor()
                .past(met(LAST, "B0", "B1"))
                .past(met(LAST.minusDays(7), "B0", "B3"))
                .rounds(2);
        PairingPlan plan = classes.plan();
        int dear = plan.rounds().get(0).joins("B0", "B3") ? 1 : 2;
        assertTrue(plan.rounds().get(dear - 1).joins("B0", "B3"));
        assertEquals(
                List.of("They could meet. Putting them together in round " + dear
                        + " would be worse by 1 in repeats of past classes, and no better in anything more important."),
                why(classes, "B0", "B1"));
    }

    @Test
    void of_rounds_that_cost_the_same_the_first_is_named() {
        Classes classes =
                Classes.of(0, 4).noInstructor().past(met(LAST, "B0", "B1")).rounds(2);
        assertEquals(
                List.of("They could meet. Putting them together in round 1 would be worse by 4 in repeats of past"
                        + " classes, and no better in anything more important."),
                why(classes, "B0", "B1"));
    }

    @Test
    void rounds_are_counted_from_the_first_that_was_played() {
        Classes classes = Classes.of(0, 4)
                .noInstructor()
                .past(met(LAST, "B0", "B1"))
                .rounds(2)
                .played("B0-B2 B1-B3");
        assertEquals(
                List.of("They could meet. Putting them together in round 2 would be worse by 4 in repeats of past"
                        + " classes, and no better in anything more important."),
                why(classes, "B0", "B1"));
    }

    /** The answer about B0 and B1 if the plan is held to cost more in past meetings than its table does. */
    private static List<String> whyOfADearTable(Classes classes, long more) {
        PairingRequest request = classes.request();
        Walks walks = new Walks(ProblemMaker.of(request), request.open());
        Solution found = (request.movement() == Movement.WALK ? walks.usual() : walks.free()).solution();
        long[] dear = Arrays.stream(Objective.values())
                .mapToLong(aim -> found.cost().of(aim) + (aim == Objective.PAST ? more : 0))
                .toArray();
        Solution dearer = new Solution(
                found.problem(), found.table(), found.method(), found.extras(), CostVector.of(dear), found.bound());
        List<String> why = new Why(request, dearer, Pairing.of(request).plan())
                .of("B0", "B1").stream().map(Message::english).toList();
        return why.subList(why.size() - 1, why.size());
    }

    /** With B0 and B1 together B2 and B3 would be left, who are kept apart. */
    @Test
    void two_who_would_leave_no_permitted_pair_to_others() {
        assertEquals(
                List.of("If they worked together, no round could be filled with permitted pairs."),
                why(Classes.of(0, 4).noInstructor().apart("B2", "B3").rounds(2), "B0", "B1"));
    }

    /** Four who have never met can be paired in three ways, all just as good; the plan is held to cost 3 more. */
    @Test
    void what_a_search_that_stopped_early_has_missed_is_owned() {
        Classes classes = Classes.of(0, 4).noInstructor().rounds(1);
        String change = classes.plan().rounds().get(0).joins("B0", "B1")
                ? "Round 1: separating them"
                : "They could meet. Putting them together in round 1";
        assertEquals(
                List.of(change
                        + " would be better by 3 in repeats of past classes; the search stopped before it found that."),
                whyOfADearTable(classes, 3));
    }

    @Test
    void what_a_movement_costs_is_owned() {
        Classes classes = Classes.of(0, 4).noInstructor().walk().rounds(1);
        String change = classes.plan().rounds().get(0).joins("B0", "B1")
                ? "Round 1: separating them"
                : "They could meet. Putting them together in round 1";
        assertEquals(
                List.of(change + " would be better by 3 in repeats of past classes, but then people couldn't change"
                        + " over by walking."),
                whyOfADearTable(classes, 3));
    }
}
