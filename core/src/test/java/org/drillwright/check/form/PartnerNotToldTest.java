package org.drillwright.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.check.Judged;
import org.drillwright.model.Side;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One text that tells of both ranks. Common practice, no source. */
class PartnerNotToldTest {

    private static Judged drill(String leader, String follower) {
        return Judged.drill("""
                start: On guard in sixte, blades apart, at lunge distance.
                steps:
                  - leader: %s
                    follower: %s
                    distance: lunge
                """.formatted(leader, follower));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Leaders, beat in quarte and lunge; followers, one step back. | One step back.  | ",
                "Leaders, beat in quarte and lunge; followers, one step back. | Parry quarte.   | one step back",
                "Leaders lunge to the chest, followers parry quarte.          | Parry octave.   | followers parry quarte",
                "Leaders lunge to the chest, followers parry.                 | Parry quarte.   | ",
                "The leader lunges while the follower steps back.             | Hold.           | while the follower steps back",
                "Lunge as your partner parries quarte.                        | Parry octave.   | ",
            })
    void what_is_told_of_the_other_is_compared_with_the_others_turn(String leader, String follower, String words) {
        List<String> found = drill(leader, follower).findings("partner-not-told");
        assertEquals(
                words == null ? List.of() : List.of(words),
                found.stream().map(one -> one.replaceAll(".*?'(.*)'$", "$1")).toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Leaders, beat in quarte and lunge; followers, one step back. | 2",
                "Meneurs, battez en quarte et fendez-vous ; suiveurs, un pas en arrière. | 2",
                "Il conduttore affonda; il seguace para di quarta. | 1",
            })
    void a_turn_plays_the_actions_of_its_own_side_alone(String words, int own) {
        assertEquals(
                own,
                drill(words, "Hold.").subject().turn(0, Side.LEADER).clauses().size());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Leaders on guard in quarte; followers, on guard in octave.",
                "Leader on guard in quarte, follower in octave."
            })
    void a_start_is_of_both(String start) {
        var state = Judged.drill("start: " + start + "\n").subject().replay().start();
        assertEquals("QUARTE", state.leader().hand().toString());
        assertEquals("OCTAVE", state.follower().hand().toString());
    }
}
