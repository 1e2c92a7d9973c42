package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Suggestions.Proposal;
import org.drillwright.model.Side;
import org.junit.jupiter.api.Test;

/**
 * What is proposed for a turn that is empty. Which moves are open is written out by hand in {@code HandCountedTest}; here they
 * stand in words, the plainest first: a parry by the shorter way (Warford 1884, p. 16), a riposte before a step, five at most.
 */
class SuggestionsTest {

    private static final String ATTACKED = """
            steps:
              - leader: Extend to the high inside line and lunge.
                distance: lunge
                safety: Arrive softly and let the blade bend.
            """;

    private static final String PARRIED = """
            steps:
              - leader: Extend to the high inside line and lunge.
                follower: Parry quarte.
                distance: lunge
                safety: Arrive softly and let the blade bend.
            """;

    private static List<Proposal> of(String steps) {
        return Suggestions.of(Judged.drill(steps).subject());
    }

    @Test
    void who_is_attacked_in_sixte_parries_takes_the_touch_or_steps_back() {
        assertEquals(
                List.of(new Proposal(
                        0,
                        Side.FOLLOWER,
                        List.of("Parry quarte.", "Make a circular parry of sixte.", "Take the touch.", "Retreat."))),
                of(ATTACKED));
    }

    /** From quarte septime is below (half-circular), and octave lies across (diagonal); neither meets a high attack. */
    @Test
    void a_low_attack_is_met_by_the_half_circle_before_the_diagonal() {
        assertEquals(
                List.of(new Proposal(0, Side.FOLLOWER, List.of("Parry septime.", "Take the touch.", "Retreat."))),
                of(ATTACKED.replace("high inside", "low inside")));
    }

    @Test
    void who_has_parried_is_offered_the_riposte_and_to_stay() {
        assertEquals(
                List.of(new Proposal(
                        1,
                        Side.FOLLOWER,
                        List.of(
                                "Riposte straight to the high inside line.",
                                "Riposte straight to the low inside line.",
                                "Riposte straight to the low outside line.",
                                "Riposte to the high outside line by disengage.",
                                "Riposte to the high outside line by cut-over.",
                                "Hold."))),
                of(PARRIED + """
                          - leader: Hold the lunge.
                            distance: extension
                            safety: Stop the point on the jacket.
                        """));
    }

    @Test
    void who_was_parried_is_offered_to_recover_first() {
        assertEquals(
                List.of(new Proposal(
                        1,
                        Side.LEADER,
                        List.of(
                                "Recover on guard.",
                                "Recover forward on guard.",
                                "Thrust to the low inside line.",
                                "Thrust to the low outside line.",
                                "Disengage to the high outside line.",
                                "Hold."))),
                of(PARRIED + """
                          - follower: Hold on guard.
                            distance: extension
                            safety: Stop the point on the jacket.
                        """));
    }

    @Test
    void who_may_begin_is_offered_steps_and_positions_before_an_attack() {
        assertEquals(
                List.of(
                        "Advance.",
                        "Retreat.",
                        "Move the hand to quarte.",
                        "Move the hand to septime.",
                        "Move the hand to octave.",
                        "Hold."),
                of("""
                        steps:
                          - follower: Hold on guard.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                        """).get(0).turns());
    }

    @Test
    void a_parried_riposte_is_answered_by_a_counter_riposte() {
        List<Proposal> proposals = of(PARRIED + """
                  - leader: Parry quarte in the lunge.
                    follower: Riposte straight to the high inside line.
                    distance: extension
                    safety: Stop the point on the jacket.
                  - follower: Hold on guard.
                    distance: extension
                    safety: Stop the point on the jacket and no further.
                """);
        assertEquals(
                "Counter-riposte straight to the high inside line.",
                proposals.get(0).turns().get(2));
    }

    @Test
    void the_follower_of_an_empty_count_may_move_too() {
        List<Proposal> proposals = of("steps:\n  - distance: lunge\n");
        assertEquals(
                List.of(Side.LEADER, Side.FOLLOWER),
                proposals.stream().map(Proposal::side).toList());
    }

    @Test
    void a_turn_that_is_there_and_a_solo_drill_get_no_proposal() {
        assertEquals(List.of(), of(PARRIED));
        assertEquals(List.of(), of("form: solo\nsteps:\n  - leader: Lunge!\n    distance: out\n"));
    }

    private static final String SABRE = """
            weapon: sabre
            start: On guard in tierce, blades apart, at lunge distance.
            opening: Salute. Masks on. On guard in tierce.
            steps:
            """;

    /** Quinte closes the head, tierce the flank, quarte the chest (Waite 1880, p. 30-58; quinte from memory). */
    @Test
    void at_sabre_a_cut_is_met_by_the_parry_of_its_line() {
        for (String cut : List.of("head: quinte", "chest: quarte")) {
            String[] words = cut.split(": ");
            assertEquals(
                    List.of(new Proposal(
                            0, Side.FOLLOWER, List.of("Parry " + words[1] + ".", "Take the touch.", "Retreat."))),
                    of(SABRE + "  - leader: Cut to the " + words[0] + " with a lunge.\n    distance: lunge\n"));
        }
    }

    /** Both stand in tierce, which closes the flank. */
    @Test
    void at_sabre_cuts_go_to_the_open_lines() {
        List<String> turns =
                of(SABRE + "  - follower: Hold.\n    distance: lunge\n").get(0).turns();
        assertEquals(
                List.of(
                        "Advance.",
                        "Retreat.",
                        "Move the hand to quarte.",
                        "Move the hand to quinte.",
                        "Cut to the head with a lunge.",
                        "Hold."),
                turns);
    }

    @Test
    void at_sabre_who_has_parried_is_offered_the_riposte() {
        List<String> turns = of(SABRE + """
                  - leader: Cut to the head with a lunge.
                    follower: Parry quinte.
                    distance: lunge
                  - leader: Hold the lunge.
                    distance: extension
                """).get(0).turns();
        assertEquals(
                List.of(
                        "Riposte with a cut to the head.",
                        "Riposte with a cut to the chest.",
                        "Riposte with a cut to the flank."),
                turns.subList(0, 3));
    }
}
