package org.drillwright.plan.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which drills are chosen where not all fit. Between two drills lies a changeover of 60 s. */
class DrillChoiceTest {

    private static final Duration CHANGEOVER = Duration.ofSeconds(60);

    /** A drill that takes so many seconds in all. */
    private static DrillLoad load(String id, int seconds, int value, boolean must) {
        return new DrillLoad(
                id,
                1,
                Duration.ofSeconds(seconds),
                Duration.ZERO,
                1,
                1,
                1,
                Duration.ZERO,
                Duration.ZERO,
                Duration.ZERO,
                1,
                value,
                must,
                List.of());
    }

    private static String chosen(int seconds, List<DrillLoad> drills) {
        return String.join(" ", Larkspur.ids(DrillChoice.of(drills, Duration.ofSeconds(seconds), CHANGEOVER)));
    }

    /** Of A, B and C, 100 s each, two take 100 + 60 + 100 = 260 s. */
    @ParameterizedTest(name = "{0} s: {1}")
    @CsvSource({"99, ''", "100, A", "259, A", "260, A B", "419, A B", "420, A B C"})
    void drills_fit_to_the_second(int seconds, String chosen) {
        List<DrillLoad> drills = List.of(load("A", 100, 2, false), load("B", 100, 2, false), load("C", 100, 1, false));
        assertEquals(chosen, chosen(seconds, drills));
    }

    /** A is worth nine times as much; but B must be there, and after it A finds no room. */
    @Test
    void room_is_kept_for_what_must_come_later() {
        List<DrillLoad> drills = List.of(load("A", 100, 9, false), load("B", 100, 1, true));
        assertEquals("B", chosen(259, drills));
        assertEquals("A B", chosen(260, drills));
    }

    /** A alone or B with C are worth 4; A takes 300 s, B and C 80 + 60 + 80 = 220 s. */
    @Test
    void of_equal_value_the_shorter_time_is_better() {
        List<DrillLoad> drills = List.of(load("A", 300, 4, false), load("B", 80, 2, false), load("C", 80, 2, false));
        assertEquals("B C", chosen(300, drills));
    }

    @Test
    void of_equal_value_and_time_the_earlier_drill_is_better() {
        assertEquals("A", chosen(100, List.of(load("A", 100, 2, false), load("B", 100, 2, false))));
    }

    /** Every set of up to six drills is looked at, in two hundred lessons drawn by chance, always the same. */
    @Test
    void no_set_of_drills_is_better_than_the_one_chosen() {
        Random chance = new Random(1);
        for (int lesson = 0; lesson < 200; lesson++) {
            List<DrillLoad> drills = EveryChoice.drawn(lesson % 7, chance);
            int room = chance.nextInt(1500);
            assertEquals(
                    Larkspur.ids(EveryChoice.bestOf(drills, room)),
                    Larkspur.ids(DrillChoice.of(drills, Duration.ofSeconds(room), CHANGEOVER)));
        }
    }

    /**
     * There are thirty million ways to take ten drills of thirty, so most must never be looked at. All take 40 s and a
     * changeover: ten take 940 s. Those of most value are the best.
     */
    @ParameterizedTest(name = "values from {0} by {1}")
    @CsvSource({
        "30, -1, d0 d1 d2 d3 d4 d5 d6 d7 d8 d9",
        "1, 1, d20 d21 d22 d23 d24 d25 d26 d27 d28 d29",
        "5, 0, d0 d1 d2 d3 d4 d5 d6 d7 d8 d9"
    })
    void ten_drills_of_thirty_are_found_at_once(int first, int step, String chosen) {
        List<DrillLoad> drills = IntStream.range(0, 30)
                .mapToObj(at -> load("d" + at, 40, first + step * at, false))
                .toList();
        assertEquals(chosen, assertTimeoutPreemptively(Duration.ofSeconds(10), () -> chosen(940, drills)));
    }

    /**
     * The last twenty of sixty must be there. With them thirty fit, in 30 x 40 + 29 x 60 = 2940 s: so ten more, and the first
     * ten are worth most.
     */
    @Test
    void twenty_that_must_be_there_are_found_at_once_with_the_best_of_the_others() {
        List<DrillLoad> drills = IntStream.range(0, 60)
                .mapToObj(at -> load("d" + at, 40, 60 - at, at >= 40))
                .toList();
        String expected = IntStream.concat(IntStream.range(0, 10), IntStream.range(40, 60))
                .mapToObj(at -> "d" + at)
                .collect(Collectors.joining(" "));
        assertEquals(expected, assertTimeoutPreemptively(Duration.ofSeconds(10), () -> chosen(2940, drills)));
    }
}
