package org.drillwright.plan.rounds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ObjectiveTest {

    /** The order is that of the class's description, the most important first. */
    @ParameterizedTest(name = "{0} is told as {1}")
    @CsvSource({
        "ASKED,hands the drill asks for,0",
        "REPEATS,repeats today,1",
        "TURNS,the instructor's turns,2",
        "THREES,turns as a third,3",
        "BLANKS,turns without a partner,4",
        "WATCHED,turns with somebody else who is new,5",
        "GAP,the sum of squared gaps in skill,6",
        "WIDEST,the largest gap in skill,7",
        "PAST,repeats of past classes,8",
        "LEVEL,differences in level,9",
        "HANDS,pairs of a right and a left hand,10"
    })
    void each_aim_has_its_words_and_its_rank(Objective aim, String words, int rank) {
        assertEquals(words, aim.words().english());
        assertEquals(rank, aim.rank());
    }
}
