package org.drillwright.check.fencing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The measure is counted in foot actions (0 extension, 1 lunge, 2 advance and lunge, 3 and more out); hand and forearm are one
 * nearer at epee. A feint or a false attack need not reach, and a bare extension only threatens.
 */
class TooFarOrTooNearTest {

    private static List<String> found(String weapon, String distance, String turn) {
        return Judged.drill("""
                weapon: %s
                start: On guard in sixte, blades apart, %s.
                steps:
                  - leader: %s
                    follower: Parry quarte.
                    distance: %s
                    safety: Arrive softly and let the blade bend.
                """.formatted(weapon, start(distance), turn, distance))
                .findings("too-far-or-too-near")
                .stream()
                .map(one -> one.substring(0, one.indexOf(' ')))
                .toList();
    }

    private static String start(String distance) {
        return distance.equals("out") ? "out of distance" : "at " + distance + " distance";
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "foil | extension     | Thrust to the high inside line.",
                "foil | lunge         | Thrust to the high inside line with a lunge.",
                "foil | advance-lunge | Advance and lunge to the high inside line.",
                "foil | out           | Advance and lunge to the high inside line.",
                "epee | lunge         | Thrust to the forearm.",
                "epee | advance-lunge | Thrust to the hand with a lunge.",
                "foil | out           | Feint to the high inside line.",
                "foil | out           | Extend to the high inside line.",
                "foil | advance-lunge | False attack with a lunge to the high inside line."
            })
    void within_the_measure_or_not_meant_to_arrive(String weapon, String distance, String turn) {
        assertEquals(List.of(), found(weapon, distance, turn), turn);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "foil | lunge         | Thrust to the high inside line.",
                "foil | advance-lunge | Thrust to the high inside line with a lunge.",
                "foil | out           | Lunge to the high inside line.",
                "foil | out           | Advance and thrust straight to the high inside line.",
                "epee | advance-lunge | Thrust to the forearm.",
                "epee | out           | Thrust to the hand with a lunge.",
                "epee | lunge         | Thrust to the chest."
            })
    void out_of_reach(String weapon, String distance, String turn) {
        assertEquals(List.of("error"), found(weapon, distance, turn), turn);
    }

    /** A lunge ends at close distance if it begins where the arm reaches; nearer than that nobody has room for one. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "extension | Advance and lunge to the high inside line.     | 1",
                "lunge     | Advance two steps and lunge to the high inside line. | 1",
                "extension | Advance three steps.                           | 1",
                "lunge     | Advance and lunge to the high inside line.     | 0",
                "extension | Advance two steps.                             | 0"
            })
    void nobody_steps_where_the_partner_stands(String distance, String turn, int refused) {
        assertEquals(refused, found("foil", distance, turn).size(), turn);
    }

    /** The attacker holds the lunge and the parrier stood fast: extension distance. */
    @Test
    void a_riposte_with_a_lunge_from_there_is_a_warning() {
        String drill = """
                steps:
                  - leader: Extend to the high inside line and lunge.
                    follower: Parry quarte.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                  - leader: Hold the lunge and take the touch.
                    follower: Riposte straight to the high inside line%s.
                    distance: extension
                    safety: Stop the point on the jacket.
                """;
        assertEquals(
                List.of("warning 7:15 'Riposte straight to the high inside line with a lunge'"),
                Judged.drill(drill.formatted(" with a lunge")).findings("too-far-or-too-near"));
        assertEquals(List.of(), Judged.drill(drill.formatted("")).findings("too-far-or-too-near"));
    }

    /** Attacker has recovered: lunge distance; parrier stepped back as well: advance and lunge. */
    @Test
    void a_riposte_at_one_who_has_recovered_needs_a_lunge() {
        String drill = """
                steps:
                  - leader: Extend to the high inside line and lunge.
                    follower: Parry quarte%s.
                    distance: lunge
                    safety: Arrive softly and let the blade bend.
                  - leader: Recover on guard in sixte.
                    follower: Hold on guard.
                    distance: lunge
                  - leader: Take the touch.
                    follower: Riposte straight to the high inside line%s.
                    distance: lunge
                    safety: Stop the point on the jacket.
                """;
        assertEquals(
                1,
                Judged.drill(drill.formatted("", ""))
                        .findings("too-far-or-too-near")
                        .size());
        assertEquals(
                0,
                Judged.drill(drill.formatted("", " with a lunge"))
                        .findings("too-far-or-too-near")
                        .size());
        assertEquals(
                1,
                Judged.drill(drill.formatted(" with a retreat", " with a lunge"))
                        .findings("too-far-or-too-near")
                        .size());
    }
}
