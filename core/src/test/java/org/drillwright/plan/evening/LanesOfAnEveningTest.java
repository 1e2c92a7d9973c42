package org.drillwright.plan.evening;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drillwright.model.Drill;
import org.drillwright.plan.lesson.Remark;
import org.drillwright.plan.roster.Hall;
import org.drillwright.register.History;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

/**
 * How the hall changes an evening. By hand, with lanes of 6 x 2 m, 1 m at the walls and between lanes side by side, 2 m
 * between lanes end to end: 18 x 10 m hold six lanes, 9 x 5 m hold one, 3 x 3 m none.
 */
class LanesOfAnEveningTest {

    private static final Hall SIX = Hall.of(1800, 1000);
    private static final Hall ONE = Hall.of(900, 500);
    private static final Hall NONE = Hall.of(300, 300);

    private final Map<String, Drill> drills = Larks.all(
            Larks.drill("salute", "beginner", "solo", "none"), Larks.drill("thrust", "beginner", "partner", "foil"));

    private ClassPlan plan(Hall hall, int people, String... solo) {
        var brief = Larks.in(hall, Set.of(solo), "salute", "thrust");
        var wished = Wished.of(Larks.school(), brief, drills);
        return ClassPlan.of(Larks.school(), Larks.roster(people, drills), brief, History.NONE, wished);
    }

    @Test
    void a_hall_that_holds_all_pairs_at_once_needs_one_wave_and_no_remark() {
        ClassPlan plan = plan(SIX, 12);
        assertEquals(1, plan.waves());
        assertEquals(List.of(), plan.remarks());
    }

    /** Seven pairs, one of them a student with the instructor, on six lanes. */
    @Test
    void thirteen_are_one_pair_too_many_for_six_lanes() {
        ClassPlan plan = plan(SIX, 13);
        assertEquals(2, plan.waves());
        assertEquals(
                List.of("The hall holds 6 pairs at once, so each round is worked in 2 waves; the time allows"
                        + " for that."),
                Remark.sentences(plan.remarks()).stream().map(Message::english).toList());
    }

    @Test
    void five_students_on_one_lane_take_three_waves() {
        ClassPlan plan = plan(ONE, 5);
        assertEquals(3, plan.waves());
        assertEquals(
                List.of("The hall holds 1 pair at once, so each round is worked in 3 waves; the time allows for that."),
                Remark.sentences(plan.remarks()).stream().map(Message::english).toList());
    }

    @Test
    void those_who_do_solo_work_need_no_lane() {
        assertEquals(2, plan(ONE, 5, "P0", "P1").waves());
    }

    @Test
    void a_hall_without_a_lane_is_told_and_counted_as_one_wave() {
        ClassPlan plan = plan(NONE, 5);
        assertEquals(1, plan.waves());
        assertEquals(1, plan.remarks().size());
        assertTrue(plan.remarks()
                .get(0)
                .sentence()
                .english()
                .startsWith("No lane fits: one lane needs at least 8 m x 4 m."));
    }

    /**
     * A repetition is one count of 2 s and 3 s back to distance. The thrust in two rounds of three waves: 2 x 3 x 2 roles x 4
     * repetitions x 5 s = 240 s; 60 s to show it, six changes of roles of 10 s, one change of partners of 30 s: 390 s. The
     * salute is done by all at once: 2 rounds x 7 x 5 s = 70 s, with 60 s of showing and 30 s between the rounds 160 s.
     */
    @Test
    void waves_lengthen_the_drills_for_partners_only() {
        ClassPlan plan = plan(ONE, 5);
        assertEquals(
                List.of(160L, 390L),
                plan.lesson().drills().stream()
                        .map(load -> load.total().toSeconds())
                        .toList());
    }

    @Test
    void only_drills_for_partners_have_rounds_of_partners() {
        assertEquals(List.of("thrust", "thrust"), plan(SIX, 6).pairing().drills());
    }

    @Test
    void the_evening_knows_its_drills_by_title_and_repetitions() {
        ClassPlan plan = plan(SIX, 6);
        assertEquals(
                List.of("salute", "thrust"),
                plan.inOrder().stream().map(Drill::id).toList());
        assertEquals("the thrust", plan.title("thrust"));
        assertEquals("lunge", plan.title("lunge"));
        assertEquals(7, plan.repetitions("salute"));
        assertEquals(4, plan.repetitions("thrust"));
        assertEquals(1, plan.repetitions("lunge"));
    }
}
