package org.drillwright.plan.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The time of a drill: showing it; for each round and wave every role all repetitions and a change between roles; a change
 * between rounds.
 */
class DrillLoadTest {

    /** Worked in threes: four counts of 2 s and 2 s back, six times, three roles, two rounds, two waves. */
    private static final DrillLoad THREES = new DrillLoad(
            "thrust",
            4,
            Duration.ofSeconds(2),
            Duration.ofSeconds(2),
            6,
            3,
            2,
            Duration.ofSeconds(120),
            Duration.ofSeconds(10),
            Duration.ofSeconds(30),
            2,
            1,
            false,
            List.of());

    /** By hand: practice 2 x 2 x 3 x 6 x 10 s = 720 s; 2 x 2 x 2 changes of 10 s = 80 s; 120 + 720 + 80 + 30 = 950 s. */
    @Test
    void in_threes_and_two_waves_there_are_eight_changes_of_roles() {
        assertEquals(720, THREES.practice().toSeconds());
        assertEquals(950, THREES.total().toSeconds());
    }

    /** By hand: 2 rounds x 2 waves x 3 roles x 10 s. */
    @Test
    void one_repetition_less_is_saved_in_every_role_round_and_wave() {
        assertEquals(120, THREES.savedByOneLess().toSeconds());
        assertEquals(
                THREES.total().minus(THREES.savedByOneLess()),
                THREES.withRepetitions(5).total());
    }

    /** By hand: 950 s less one round of 360 s, its four changes of 10 s and one change of partners of 30 s. */
    @Test
    void a_round_less_saves_its_practice_and_its_changes() {
        assertEquals(
                Duration.ofSeconds(950 - 360 - 40 - 30), THREES.withRounds(1).total());
    }
}
