package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.drillwright.notation.Utterance;
import org.drillwright.reading.TurnReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which turns send a point or an edge at a person, and which mean a touch: the design's rules of gear and of safety. */
class IntentTest {

    private static Utterance read(String turn) {
        return TurnReader.standard().read(turn);
    }

    @ParameterizedTest
    @CsvSource({
        "true,  Extend to the high inside line.",
        "true,  Feint to the high inside line.",
        "true,  Extend and lunge to the high inside line.",
        "true,  Riposte straight to the high inside line.",
        "true,  Lunge to the high inside line.",
        "true,  Bind to the low inside line.",
        "false, Lunge.",
        "false, Thrust at the mark.",
        "false, Lunge to the mark.",
        "false, Beat.",
        "false, Press.",
        "false, Engage in quarte.",
        "false, Parry quarte.",
        "false, Advance.",
        "false, Take the touch."
    })
    void what_is_sent_at_a_person(boolean offensive, String turn) {
        assertEquals(offensive, Intent.isOffensive(read(turn)), turn);
    }

    @ParameterizedTest
    @CsvSource({
        "true,  Extend to the high inside line and lunge.",
        "true,  Thrust to the high inside line.",
        "true,  Riposte straight to the high inside line.",
        "true,  Bind to the low inside line.",
        "true,  Take the touch.",
        "false, Extend to the high inside line.",
        "false, Feint to the high inside line.",
        "false, Feint to the high inside line and lunge.",
        "false, Thrust at the mark.",
        "false, Beat.",
        "false, Hold on guard.",
        "false, Evade by ducking.",
        "false, Lunge."
    })
    void what_means_a_touch(boolean touch, String turn) {
        assertEquals(touch, Intent.isTouch(read(turn)), turn);
    }
}
