package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.register.Entry;
import org.junit.jupiter.api.Test;

/**
 * What a turn with the instructor costs. Ash is kept apart from Bo and Cy, the only others, so in each round it is Ash's
 * turn, and that is what the plan costs.
 */
class TurnCostTest {

    private static final LocalDate DAY = LocalDate.of(2026, 9, 7);

    private final Classes classes = Classes.of(Classes.named(Set.of(Classes.DRILL), "Ash", "Bo", "Cy"))
            .apart("Ash", "Bo")
            .apart("Cy", "Ash")
            .rounds(1);

    private void turns(String student, int turns, String helper) {
        for (int turn = 0; turn < turns; turn++) {
            classes.past(Entry.workedWith(DAY.minusWeeks(turn), student, "thrust", helper));
        }
    }

    /** All three came to six classes. */
    private void sixClasses() {
        for (int week = 0; week < 6; week++) {
            for (String name : List.of("Ash", "Bo", "Cy")) {
                classes.past(Entry.attended(DAY.minusWeeks(week), name));
            }
        }
    }

    private long cost(Objective aim) {
        return classes.plan().verdict().orElseThrow().cost().of(aim);
    }

    @Test
    void a_first_turn_costs_nothing() {
        assertEquals(0, cost(Objective.TURNS));
    }

    @Test
    void turns_count_beyond_those_of_whoever_had_fewest() {
        sixClasses();
        turns("Ash", 5, "instructor");
        turns("Bo", 2, "instructor");
        turns("Cy", 3, "instructor");
        assertEquals(5 - 2, cost(Objective.TURNS));
    }

    @Test
    void the_record_may_name_the_instructor_first() {
        sixClasses();
        turns("instructor", 2, "Ash");
        assertEquals(2, cost(Objective.TURNS));
    }

    /** Six turns in classes to which all three came; six more in classes that Ash had alone, whose turns are nobody else's. */
    @Test
    void turns_of_a_class_are_shared_by_those_who_were_there() {
        sixClasses();
        turns("Ash", 12, "instructor");
        assertEquals(6, cost(Objective.TURNS));
    }

    /** Bo and Cy had a turn in each of three classes; Ash came to one of these and had one there. */
    @Test
    void who_comes_seldom_is_owed_no_less_and_owes_no_more() {
        for (int week = 0; week < 3; week++) {
            classes.past(Entry.attended(DAY.minusWeeks(week), "Bo")).past(Entry.attended(DAY.minusWeeks(week), "Cy"));
        }
        turns("Bo", 3, "instructor");
        turns("Cy", 3, "instructor");
        turns("Ash", 1, "instructor");
        assertEquals(0, cost(Objective.TURNS));
    }

    /** In two of six classes Bo had one turn and Cy none: half a turn too much and too little, twice. Ash is between them. */
    @Test
    void a_newcomer_stands_where_each_has_had_a_fair_share() {
        for (int week = 0; week < 6; week++) {
            classes.past(Entry.attended(DAY.minusWeeks(week), "Bo")).past(Entry.attended(DAY.minusWeeks(week), "Cy"));
        }
        turns("Bo", 4, "instructor");
        turns("Cy", 2, "instructor");
        assertEquals(1, cost(Objective.TURNS));
        turns("Cy", 1, "instructor");
        turns("instructor", 1, "Cy");
        assertEquals(0, cost(Objective.TURNS));
    }

    @Test
    void turns_with_todays_assistants_count_too() {
        sixClasses();
        classes.assistants("Wren");
        turns("Ash", 1, "Wren");
        turns("Ash", 1, "instructor");
        assertEquals(2, cost(Objective.TURNS));
    }

    @Test
    void a_meeting_of_two_students_is_no_turn() {
        turns("Bo", 3, "Cy");
        turns("Ash", 3, "Wren");
        assertEquals(0, cost(Objective.TURNS));
    }

    @Test
    void where_an_assistant_stands_in_the_instructors_turns_count_as_well() {
        sixClasses();
        classes.noInstructor().assistants("Wren");
        turns("Ash", 2, "instructor");
        assertEquals(2, cost(Objective.TURNS));
    }

    /** A turn in the past, one in the first round today; the second today is the third of all. */
    @Test
    void a_turn_earlier_today_counts_one_more() {
        sixClasses();
        turns("Ash", 1, "instructor");
        classes.rounds(2).played("Ash-instructor Bo-Cy");
        assertEquals(1 + 1, cost(Objective.TURNS));
        assertEquals(0, cost(Objective.BLANKS));
    }

    @Test
    void a_turn_of_someone_else_today_does_not_count() {
        classes.rounds(2).played("Bo-instructor Ash Cy");
        assertEquals(0, cost(Objective.TURNS));
    }

    /** Alone in two rounds that were played, Ash is alone a third time. */
    @Test
    void a_turn_without_a_partner_costs_as_many_as_there_were_today() {
        classes.noInstructor().rounds(3).played("Ash Bo-Cy").played("Bo-Cy Ash");
        assertEquals(2, cost(Objective.BLANKS));
        assertEquals(0, cost(Objective.TURNS));
    }
}
