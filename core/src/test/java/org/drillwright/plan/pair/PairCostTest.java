package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.drillwright.model.Hands;
import org.drillwright.plan.roster.Hand;
import org.drillwright.plan.roster.Person;
import org.drillwright.plan.rounds.Objective;
import org.drillwright.register.Entry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What it costs that Ash and Bo work together. They are the only two in a class of one round, so that is what the plan
 * costs.
 */
class PairCostTest {

    private static final LocalDate DAY = LocalDate.of(2026, 9, 14);

    private static Person person(String name, Optional<String> level, OptionalInt skill, Optional<Hand> hand) {
        return new Person(name, level, hand, skill, Set.of(Classes.DRILL), List.of(), false, false);
    }

    private static Person named(String name) {
        return person(name, Optional.empty(), OptionalInt.empty(), Optional.empty());
    }

    private static Classes two() {
        return two(named("Ash"), named("Bo"));
    }

    private static Classes two(Person one, Person other) {
        return Classes.of(List.of(one, other)).noInstructor().rounds(1);
    }

    private static long cost(Classes classes, Objective aim) {
        return classes.plan().verdict().orElseThrow().cost().of(aim);
    }

    private static Optional<String> stated(String word) {
        return Optional.of(word).filter(text -> !text.equals("-"));
    }

    /** A meeting in the last class counts 4, in the one before 3, then 2, and 1 however long ago. */
    @ParameterizedTest(name = "{0} classes ago: {1}")
    @CsvSource({"1,4", "2,3", "3,2", "4,1", "5,1", "9,1"})
    void a_recent_meeting_costs_more(int ago, int cost) {
        Classes classes = two();
        for (int week = 1; week <= 9; week++) {
            LocalDate day = DAY.minusWeeks(week);
            classes.past(Entry.workedWith(day, "Cy", "thrust", "Dee"));
            if (week == ago) {
                classes.past(Entry.workedWith(day, "Ash", "thrust", "Bo"));
            }
        }
        assertEquals(cost, cost(classes, Objective.PAST));
    }

    /** By hand: 4 in the last class and 3 in the one before, whoever of the two the record names first. */
    @Test
    void meetings_add_up_from_either_side() {
        assertEquals(
                7,
                cost(
                        two().past(Entry.workedWith(DAY, "Bo", "thrust", "Ash"))
                                .past(Entry.workedWith(DAY.minusDays(7), "Ash", "thrust", "Bo")),
                        Objective.PAST));
    }

    @Test
    void past_meetings_cost_nine_at_most() {
        Classes classes = two();
        for (String drill : List.of("thrust", "parry", "lunge")) {
            classes.past(Entry.workedWith(DAY, "Ash", drill, "Bo"));
        }
        assertEquals(9, cost(classes, Objective.PAST));
    }

    @Test
    void meetings_with_others_cost_nothing() {
        assertEquals(
                0,
                cost(
                        two().past(Entry.workedWith(DAY, "Ash", "thrust", "Cy"))
                                .past(Entry.workedWith(DAY, "Cy", "thrust", "Bo"))
                                .past(Entry.workedWith(DAY, "Ash", "thrust", "instructor")),
                        Objective.PAST));
    }

    /** The school's levels are beginner, intermediate, training. */
    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource({
        "beginner, beginner, 0",
        "beginner, intermediate, 1",
        "intermediate, beginner, 1",
        "training, intermediate, 1",
        "beginner, training, 2",
        "training, beginner, 2",
        "-, training, 0",
        "training, -, 0",
        "-, -, 0",
        "of another school, training, 0",
        "training, of another school, 0"
    })
    void levels_apart(String one, String other, int cost) {
        Person ash = person("Ash", stated(one), OptionalInt.empty(), Optional.empty());
        Person bo = person("Bo", stated(other), OptionalInt.empty(), Optional.empty());
        assertEquals(cost, cost(two(ash, bo), Objective.LEVEL));
        assertEquals(0, cost(two(ash, bo), Objective.GAP));
        assertEquals((long) cost * cost, cost(two(ash, bo).training(), Objective.GAP));
        assertEquals(cost, cost(two(ash, bo).training(), Objective.WIDEST));
        assertEquals(0, cost(two(ash, bo).training(), Objective.LEVEL));
    }

    @ParameterizedTest(name = "{0}, {1}: {2}")
    @CsvSource({"12, 19, 7", "19, 12, 7", "0, 99, 99", "0, 120, 99", "5, 5, 0"})
    void in_training_the_square_of_the_gap_in_skill(int one, int other, int gap) {
        Classes classes = two(named("Ash").withSkill(one), named("Bo").withSkill(other));
        assertEquals((long) gap * gap, cost(classes.training(), Objective.GAP));
        assertEquals(gap, cost(classes, Objective.WIDEST));
    }

    @Test
    void where_one_has_no_skill_number_levels_stand_for_it() {
        Person ash = person("Ash", Optional.of("beginner"), OptionalInt.of(90), Optional.empty());
        Person bo = person("Bo", Optional.of("training"), OptionalInt.empty(), Optional.empty());
        assertEquals(2 * 2, cost(two(ash, bo).training(), Objective.GAP));
    }

    @ParameterizedTest(name = "the drill wants {0}, they have {1} and {2}: {3}")
    @CsvSource({
        "SAME, RIGHT, RIGHT, 0",
        "SAME, RIGHT, LEFT, 1",
        "SAME, LEFT, LEFT, 0",
        "OPPOSITE, RIGHT, RIGHT, 1",
        "OPPOSITE, LEFT, RIGHT, 0"
    })
    void hands_that_are_not_those_of_the_drill(Hands wanted, Hand one, Hand other, int cost) {
        Classes classes = two(named("Ash").withHand(one), named("Bo").withHand(other));
        Objective aim = wanted == Hands.OPPOSITE ? Objective.ASKED : Objective.HANDS;
        assertEquals(cost, cost(classes.hands("thrust", wanted), aim));
        assertEquals(0, cost(classes, aim == Objective.ASKED ? Objective.HANDS : Objective.ASKED));
    }

    /** Left against right suits the one drill and not the other; each round counts by its own. */
    @Test
    void drills_of_both_sorts_each_count_by_their_own() {
        Person ash = named("Ash").withHand(Hand.RIGHT);
        Person bo = named("Bo").withHand(Hand.LEFT);
        Person oz = named("Oz").withHand(Hand.LEFT);
        Classes mixed = two(ash, bo).hands("thrust", Hands.SAME).hands("parry", Hands.OPPOSITE);
        assertEquals(1, cost(mixed.training().drills("thrust", "parry"), Objective.HANDS));
        assertEquals(0, cost(mixed.training().drills("thrust", "parry"), Objective.ASKED));
        Classes alike = two(oz, bo).hands("thrust", Hands.SAME).hands("parry", Hands.OPPOSITE);
        assertEquals(1, cost(alike.training().drills("thrust", "parry"), Objective.ASKED));
        assertEquals(0, cost(alike.training().drills("thrust", "parry"), Objective.HANDS));
    }

    @Test
    void a_hand_that_is_not_stated_suits_every_drill() {
        Person ash = named("Ash").withHand(Hand.RIGHT);
        assertEquals(0, cost(two(ash, named("Bo")).hands("thrust", Hands.OPPOSITE), Objective.ASKED));
        assertEquals(0, cost(two(named("Bo"), ash).hands("thrust", Hands.OPPOSITE), Objective.ASKED));
    }

    /** The second meeting of a day costs 1, the third 2 more. */
    @Test
    void a_meeting_earlier_today_is_a_repeat() {
        assertEquals(1, cost(two().rounds(2).played("Ash-Bo"), Objective.REPEATS));
        assertEquals(2, cost(two().rounds(3).played("Ash-Bo").played("Ash-Bo"), Objective.REPEATS));
        assertEquals(1 + 2, cost(two().rounds(3).played("Ash-Bo"), Objective.REPEATS));
        assertEquals(0, cost(two().rounds(2).played("Ash Bo"), Objective.REPEATS));
    }
}
