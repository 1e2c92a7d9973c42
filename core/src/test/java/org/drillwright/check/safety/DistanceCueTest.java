package org.drillwright.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DistanceCueTest {

    private static List<String> found(String cue) {
        return Judged.drill("steps:\n  - leader: Hold.\n    follower: Hold.\n    distance: " + cue + "\n")
                .all()
                .stream()
                .filter(finding ->
                        finding.rule().equals("distance-cue") && finding.what().endsWith("names no distance."))
                .map(finding -> finding.file().slice(finding.span()))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "close",
                "extension",
                "lunge",
                "advance-lunge",
                "out",
                "Lunge",
                "advance and lunge",
                "lunge to extension",
                "advance-lunge to lunge",
                "out of distance"
            })
    void a_known_cue_is_silent(String cue) {
        assertEquals(List.of(), found(cue));
    }

    @ParameterizedTest
    @ValueSource(strings = {"lange", "three steps", "a bit further", "...", "2"})
    void an_unknown_cue_is_found(String cue) {
        assertEquals(List.of(cue), found(cue));
    }

    @Test
    void an_absent_cue_is_found_at_its_count() {
        assertEquals(List.of("error 5:5 'leader: Wait.'"), Judged.drill("""
                        steps:
                          - leader: Hold.
                            follower: Hold.
                            distance: lunge
                          - leader: Wait.
                            follower: Wait.
                        """).findings("distance-cue"));
    }
}
