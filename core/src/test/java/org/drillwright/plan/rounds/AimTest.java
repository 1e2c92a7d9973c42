package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AimTest {

    /** The order is that of the class's description, the most important first. */
    @ParameterizedTest(name = "{0} is told as {1}")
    @CsvSource({
        "REPEATS,repeats today,0",
        "TURNS,the instructor's turns,1",
        "BLANKS,turns without a partner,2",
        "GAP,the sum of gaps in skill,3",
        "WIDEST,the largest gap in skill,4",
        "PAST,repeats of past classes,5",
        "LEVEL,differences in level,6",
        "HANDS,hands,7"
    })
    void each_aim_has_its_words_and_its_rank(Aim aim, String words, int rank) {
        assertEquals(words, aim.words());
        assertEquals(rank, aim.rank());
    }
}
