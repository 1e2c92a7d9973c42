package org.drillwright.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A level with blades none crosses no blades and points at nobody. */
class BeyondTheLevelTest {

    private static List<String> found(String level, String form, String turn) {
        return Judged.drill("level: " + level + "\nform: " + form + "\nsteps:\n  - leader: Hold.\n    follower: " + turn
                        + "\n    distance: out\n")
                .findings("beyond-the-level");
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "Parry quarte.",
        "Engage in sixte.",
        "Beat.",
        "Straight thrust to the high inside line.",
        "Feint to the high inside line.",
        "Extend to the high inside line."
    })
    void blades_and_points_are_found(String turn) {
        assertEquals(1, found("beginner", "partner", turn).size());
        assertEquals(List.of(), found("intermediate", "partner", turn));
        assertEquals(List.of(), found("training", "partner", turn));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Advance.", "Lunge.", "Retreat on guard.", "Hold.", "Salute.", "Extend at the mark."})
    void steps_and_calls_are_not(String turn) {
        assertEquals(List.of(), found("beginner", "partner", turn));
    }

    @Test
    void alone_one_may_parry_and_extend_but_meet_no_blade() {
        assertEquals(List.of(), found("beginner", "solo", "Parry quarte."));
        assertEquals(List.of(), found("beginner", "solo", "Extend to the high inside line."));
        assertEquals(1, found("beginner", "solo", "Beat the blade.").size());
    }

    @Test
    void a_level_is_known_by_its_setting_and_not_by_its_name() {
        String school = "levels: [{name: beginner, turns: one, blades: by-the-count}]";
        assertEquals(List.of(), Judged.in(school, "level: beginner").findings("beyond-the-level"));
    }
}
