package org.drillwright.check.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drillwright.wording.Message;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of gear and care is grammatical in each language: written by hand, checked by eye. */
class SafetyWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | Pas jugé : « frobe » n’a pas été compté comme masque, faute d’avoir compris « frobe ».
            it | Non giudicato: «frobe» non è stato contato come maschera, perché non si è capito «frobe».
            es | No juzgado: «frobe» no se ha contado como careta, porque no se ha entendido «frobe».
            de | Nicht beurteilt: „frobe“ wurde nicht als Maske gezählt, denn „frobe“ war nicht zu verstehen.
            """)
    void what_was_not_understood_is_quoted_as_the_language_quotes(String language, String said) {
        Message unclear = Message.of(
                GearMissing.class, "gear-missing.unclear", "frobe", GearPiece.MASK.words(), Message.quoted("frobe"));
        assertEquals(said, unclear.in(Locale.forLanguageTag(language)).replace('\u00a0', ' '));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "fr", "it", "es", "de"})
    void the_pieces_that_are_proposed_are_understood(String language) {
        for (GearPiece piece : GearPiece.values()) {
            String word = piece.words().in(Locale.forLanguageTag(language));
            assertTrue(new GearList(List.of(word), Map.of()).has(piece), word);
        }
    }
}
