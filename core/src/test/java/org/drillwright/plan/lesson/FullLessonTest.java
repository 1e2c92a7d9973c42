package org.drillwright.plan.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

/**
 * How rounds fill the time. By hand: 900 s are opening, warm-up and closing; D1 takes 120 s to show, 130 s a round, of
 * which 120 s are practice, and 30 s between rounds.
 */
class FullLessonTest {

    private static LessonPlan filled(int seconds, List<DrillLoad> drills, int most) {
        return new Lesson(Duration.ofSeconds(seconds), Larkspur.TIMING).planWithRounds(drills, most);
    }

    /** 900 + 120 + 3 x 130 + 2 x 30 = 1470. */
    @Test
    void a_round_that_fits_to_the_second_is_given() {
        LessonPlan plan = filled(1470, List.of(Larkspur.THRUST), 12);
        assertEquals(List.of("D1", "D1", "D1"), plan.drillOfEachRound());
        assertEquals(Duration.ZERO, plan.spare());
        assertTrue(plan.fits());
        assertEquals(
                List.of("D1", "D1"), filled(1469, List.of(Larkspur.THRUST), 12).drillOfEachRound());
    }

    /** 12 rounds of 120 s are 1440 of 3600 s: 40 %. With one round less it is 1320 s, 37 %. */
    @Test
    void the_warning_of_little_practice_is_of_the_lesson_as_filled() {
        assertEquals(List.of(), filled(3600, List.of(Larkspur.THRUST), 12).advice());
        assertEquals(
                List.of("Only 37 % of the class is practice; aim for 50 %, and at least 40 %."),
                Remark.sentences(filled(3600, List.of(Larkspur.THRUST), 11).advice()).stream()
                        .map(Message::english)
                        .toList());
    }

    /** D1 and D2 take 410 + 774 s and a changeover of 60 s: 1244 of 1500 s; D3, of 410 s, finds no room. */
    @Test
    void what_finds_no_room_is_left_out() {
        LessonPlan plan = new Lesson(Duration.ofMinutes(40), Larkspur.TIMING)
                .plan(List.of(Larkspur.THRUST, Larkspur.PARRY, Larkspur.STEP));
        assertEquals(List.of("D1", "D2"), Larkspur.ids(plan.drills()));
        assertEquals(List.of("D3"), Larkspur.ids(plan.leftOut()));
    }

    /** D1 must be there and takes 410 s where 409 are left. */
    @Test
    void a_lesson_too_short_for_what_must_be_there_does_not_fit_and_is_given_no_rounds() {
        DrillLoad must = Larkspur.required(Larkspur.THRUST);
        LessonPlan plan = filled(1309, List.of(must), 12);
        assertFalse(plan.fits());
        assertEquals(2, plan.drills().get(0).rounds());
    }

    /** A drill of one second a round could fill an hour with hundreds of rounds. */
    @Test
    void no_drill_is_given_more_than_forty_rounds() {
        DrillLoad quick = new DrillLoad(
                "salute",
                1,
                Duration.ofSeconds(1),
                Duration.ZERO,
                1,
                1,
                1,
                Duration.ZERO,
                Duration.ZERO,
                Duration.ZERO,
                1,
                1,
                false,
                List.of());
        assertEquals(40, filled(3600, List.of(quick), 500).drills().get(0).rounds());
    }
}
