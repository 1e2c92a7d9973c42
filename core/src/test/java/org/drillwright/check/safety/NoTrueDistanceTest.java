package org.drillwright.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NoTrueDistanceTest {

    private static List<String> found(String cue) {
        return Judged.drill("steps:\n  - leader: Hold.\n    follower: Hold.\n    distance: " + cue + "\n")
                .all()
                .stream()
                .filter(finding -> finding.rule().equals("no-true-distance")
                        && finding.what().english().endsWith("is not a distance."))
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

    /** A French allonge is the arm put out, what English masters call so is the lunge. */
    @ParameterizedTest
    @ValueSource(strings = {"de fente à allonge", "lunge to extension", "fente, puis allongement du bras"})
    void a_cue_is_read_in_the_language_of_the_drill(String cue) {
        assertEquals(List.of(), Judged.drill("""
                        start: En garde de sixte, fers séparés, à distance de fente.
                        steps:
                          - leader: Allongez le bras à la poitrine, ligne du dedans, et fendez-vous.
                            follower: Parez quarte.
                            distance: "%s"
                            safety: Laissez plier la lame.
                        """.formatted(cue)).findings("no-true-distance"));
    }

    @Test
    void the_way_out_names_the_measures_in_the_language_of_the_drill() {
        assertEquals(
                List.of("Did you mean 'affondo'? Known: misura ravvicinata, distensione, affondo, passo avanti e"
                        + " affondo, fuori misura, or two of them as in 'distensione – affondo'."),
                Judged.drill("""
                        steps:
                          - leader: Resta in guardia.
                            follower: Resta in guardia.
                            distance: afondo
                        """).all().stream()
                        .filter(finding -> finding.rule().equals("no-true-distance"))
                        .map(finding -> finding.wayOut().english())
                        .toList());
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
                        """).findings("no-true-distance"));
    }

    /** From lunge distance (1) a lunge leads to extension distance (0); the follower's parry steps nowhere. */
    @ParameterizedTest
    @ValueSource(strings = {"lunge", "extension", "lunge to extension", "extension to lunge"})
    void a_measure_of_the_count_is_silent(String cue) {
        assertEquals(List.of(), measured(cue));
    }

    @ParameterizedTest
    @ValueSource(strings = {"out", "close", "advance-lunge", "lunge to out", "out to lunge"})
    void a_measure_that_the_count_never_has_is_a_warning(String cue) {
        assertEquals(List.of("Count 1 begins at lunge distance and ends at extension distance."), measured(cue));
    }

    private static List<String> measured(String cue) {
        return Judged.drill("""
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Parry quarte.
                            distance: %s
                            safety: Arrive softly and let the blade bend.
                        """.formatted(cue)).all().stream()
                .filter(finding -> finding.rule().equals("no-true-distance"))
                .map(finding -> finding.what().english())
                .toList();
    }

    /** A half step leaves the measure unknown until it is stated again. */
    @Test
    void where_the_measure_is_unknown_any_cue_will_do() {
        assertEquals(List.of(), Judged.drill("""
                        steps:
                          - leader: Half step forward.
                            follower: Hold on guard.
                            distance: close
                        """).findings("no-true-distance"));
    }

    @Test
    void a_mistyped_cue_is_told_its_nearest() {
        assertEquals(
                List.of("Did you mean 'lunge'? Known: close, extension, lunge, advance-lunge, out, or two of them as in"
                        + " 'extension to lunge'."),
                Judged.drill("steps:\n  - leader: Hold.\n    follower: Hold.\n    distance: lange\n").all().stream()
                        .filter(finding -> finding.rule().equals("no-true-distance"))
                        .map(finding -> finding.wayOut().english())
                        .toList());
    }
}
