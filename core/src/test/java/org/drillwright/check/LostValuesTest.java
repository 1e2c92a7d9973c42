package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is found in a drill of which a value could not be read. Handling of faulty files; no fact of the trade. */
class LostValuesTest {

    /** The hand in quarte leaves the flank open at each weapon. Common practice, no source. */
    private static final String OPEN = """
            start: On guard in sixte, blades apart, at lunge distance.
            steps:
              - leader: Lunge to the flank.
                follower: Parry quarte.
                distance: lunge
            """;

    /** The thigh is a target at épée, not at sabre (FIE, Technical Rules t.91 and t.97). */
    private static final String THIGH = """
            start: On guard in tierce, blades apart, at lunge distance.
            steps:
              - leader: Cut to the thigh with a lunge.
                follower: Retreat.
                distance: lunge
            """;

    @ParameterizedTest
    @ValueSource(strings = {"works-on: [balance]", "level: expert", "weapon: rapier", "hands: lefty", "repeat: six"})
    void a_fault_that_does_not_rest_on_it_is_found(String lost) {
        assertEquals(
                1, Judged.drill(lost + "\n" + OPEN).findings("parry-misses").size());
    }

    @Test
    void a_fault_that_rests_on_it_is_not_held_against_the_drill() {
        assertFalse(
                Judged.drill("weapon: sabre\n" + THIGH).findings("off-target").isEmpty());
        assertEquals(List.of(), Judged.drill("weapon: rapier\n" + THIGH).findings("off-target"));
    }

    @Test
    void nothing_is_called_judged_that_rests_on_it() {
        assertTrue(Judged.drill("works-on: [balance]\n" + OPEN)
                .subject()
                .coverage()
                .isWhole());
        Stream.of("weapon: rapier", "hands: lefty", "form: pairs")
                .forEach(lost -> assertEquals(
                        1,
                        Judged.drill(lost + "\n" + OPEN)
                                .subject()
                                .coverage()
                                .gaps()
                                .size(),
                        lost));
    }

    @Test
    void gear_that_could_not_be_read_is_not_said_to_lack_a_piece() {
        List<String> rules = Judged.drill("gear: mask\n" + OPEN).all().stream()
                .map(Finding::rule)
                .toList();
        assertFalse(rules.contains("gear-missing"), rules.toString());
    }
}
