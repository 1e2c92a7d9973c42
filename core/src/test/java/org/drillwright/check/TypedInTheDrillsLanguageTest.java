package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.drillwright.check.courtesy.SaluteMissing;
import org.drillwright.check.form.TurnMissing;
import org.drillwright.meaning.ActionText;
import org.drillwright.notation.Utterance;
import org.drillwright.reading.TurnReader;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a way out proposes to type into a drill is in the drill's language, whoever reads the finding. */
class TypedInTheDrillsLanguageTest {

    private static final String SPANISH = """
            title: Sin saludo
            level: intermediate
            form: partner
            weapon: foil
            language: es
            gear: [chaquetilla, guante]
            start: En guardia de sexta, a distancia de fondo, sin contacto de hierros.
            opening: En guardia.
            steps:
              - leader: Tira un golpe recto al pecho con fondo.
                follower: Para cuarta.
              - leader: Vuelve a la guardia y marcha un paso.
            closing: Rompan fuera de distancia. Quítense las caretas.
            """;

    private static List<String> waysOut(String rule, Locale reader) {
        return Corpus.correct().judge("sin-saludo", SPANISH).findings().stream()
                .filter(finding -> finding.rule().equals(rule))
                .map(finding -> finding.wayOut().in(reader))
                .toList();
    }

    @Test
    void the_salute() {
        assertEquals(
                List.of(
                        "Write: opening: Saluden. En guardia.",
                        "Write: closing: Rompan fuera de distancia. Quítense las caretas. Saluden."),
                waysOut("salute-missing", Locale.ENGLISH));
    }

    @Test
    void the_pieces_of_gear() {
        assertEquals(
                List.of("Write: gear: [chaquetilla, guante, careta, peto interior]"),
                waysOut("gear-missing", Locale.ENGLISH));
    }

    @Test
    void the_note_on_safety() {
        assertEquals(
                List.of("Add a line such as 'safety: Llegue con suavidad y deje que la hoja se doble hacia arriba.'"),
                waysOut("safety-note-missing", Locale.ENGLISH));
    }

    @Test
    void the_turn_that_is_missing() {
        assertEquals(
                List.of("Schreiben, was der Folgende tut, und sei es „follower: No se mueva“."),
                waysOut("turn-missing", Locale.GERMAN));
    }

    @Test
    void what_may_be_joined_and_how_long_the_way_is() {
        assertEquals(
                List.of("Give it a count of its own; only parts of one action may be joined,"
                        + " such as 'extienda el brazo y tírese a fondo'."),
                waysOut("too-much-in-a-count", Locale.ENGLISH));
        assertTrue(waysOut("no-true-distance", Locale.ENGLISH).stream()
                .allMatch(way -> way.contains("'distance: fondo'")));
    }

    @ParameterizedTest
    @CsvSource({"en", "fr", "it", "es", "de"})
    void what_is_proposed_is_read_as_what_it_is_proposed_for(String language) {
        assertEquals("hold", read("typed.hold", language));
        assertEquals("strike extension direct, lunge", read("typed.joined", language));
        assertEquals("parry quarte", read("typed.order", language));
        assertEquals("parry quarte", read("typed.told", language));
        String salute = Message.of(SaluteMissing.class, "typed.salute").in(Locale.forLanguageTag(language));
        assertTrue(Intent.isSaluteByBoth(TurnReader.standard().read(salute, language)), salute);
    }

    private static String read(String key, String language) {
        String words = Message.of(TurnMissing.class, key).in(Locale.forLanguageTag(language));
        Utterance read = TurnReader.standard().read(words, language);
        assertTrue(read.isRead(), words);
        return String.join(", ", read.actions().stream().map(ActionText::of).toList());
    }
}
