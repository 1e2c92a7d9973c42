package org.drillwright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.drillwright.meaning.ActionText;
import org.drillwright.notation.Action;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Where a target is taken. That targets are displaced and ducked is of the FIE's rules (t.27 of 2023, from memory); that the
 * passata sotto goes below the blade and the inquartata to the side, of Barbasetti, The Art of the Foil, 1932 (from memory).
 * The rest is language: common practice, no source.
 */
class EvasionsTest {

    private static final TurnReader READER = TurnReader.standard();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Duck.                                          | evade ducked
            Duck under the blade.                          | evade ducked
            Make a passata sotto.                          | evade ducked
            Crouch.                                        | evade ducked
            Sidestep.                                      | evade aside
            Make an inquartata.                            | evade aside
            Step off the line.                             | evade aside
            Evade to the side.                             | evade aside
            Lean back.                                     | evade back
            Draw the body back.                            | evade back
            Withdraw the front foot.                       | evade leg
            Pull your front leg back out of the way.       | evade leg
            Pull the hand out of the way.                  | evade hand
            Evade.                                         | evade
            Dodge the thrust.                              | evade
            Baissez-vous.                                  | evade ducked
            Passata sotto.                                 | evade ducked
            Un pas de côté.                                | evade aside
            Esquivez en arrière.                           | evade back
            Retirez le pied avant.                         | evade leg
            Esquivez.                                      | evade
            Abbassati.                                     | evade ducked
            Inquartata.                                    | evade aside
            Schiva di lato.                                | evade aside
            Schiva all'indietro.                           | evade back
            Ritira il piede avanti.                        | evade leg
            Schiva.                                        | evade
            """)
    void it_is_taken_where_the_words_say(String words, String meant) {
        List<Action> read = READER.read(words).actions();
        assertEquals(List.of(meant), read.stream().map(ActionText::of).toList());
    }
}
