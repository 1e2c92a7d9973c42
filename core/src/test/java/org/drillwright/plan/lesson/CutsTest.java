package org.drillwright.plan.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.List;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

/**
 * What could be cut of a lesson with 900 s of opening, warm-up and closing. D1 takes 410 s; each of its six repetitions
 * takes 40 s in all, so at one repetition it takes 210 s.
 */
class CutsTest {

    private static final List<DrillLoad> D1 = List.of(Larkspur.THRUST);

    private static List<String> advice(int seconds, List<DrillLoad> chosen) {
        return Remark.sentences(Cuts.advice(new Lesson(Duration.ofSeconds(900 + seconds), Larkspur.TIMING), D1, chosen))
                .stream()
                .map(Message::english)
                .toList();
    }

    @Test
    void where_all_fits_to_the_second_there_is_nothing_to_cut() {
        assertEquals(List.of(), advice(410, D1));
        assertEquals(List.of(), advice(411, D1));
    }

    @Test
    void what_saves_just_enough_is_enough() {
        assertEquals(
                List.of(
                        "Together they take 1:20 min more than the class lasts; left out: D1.",
                        "To keep them all, cut repetitions: D1 2; that saves 1:20 min."),
                advice(330, List.of()));
    }

    @Test
    void one_second_more_costs_another_repetition() {
        assertEquals(
                "To keep them all, cut repetitions: D1 3; that saves 2:00 min.",
                advice(329, List.of()).get(1));
    }

    @Test
    void one_repetition_is_left_of_each() {
        assertEquals(
                "To keep them all, cut repetitions: D1 5; that saves 3:20 min.",
                advice(210, List.of()).get(1));
        assertEquals(
                "Even at one repetition each they don't all fit.",
                advice(209, List.of()).get(1));
    }

    @Test
    void what_must_be_there_and_is_too_long_is_told_by_how_much() {
        assertEquals(
                List.of(
                        "The drills that must be included take 0:01 min more than the class lasts.",
                        "To keep them all, cut repetitions: D1 1; that saves 0:40 min."),
                advice(409, D1));
    }
}
