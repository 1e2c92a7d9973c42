package org.drillwright.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.drillwright.model.Side;
import org.drillwright.reading.TurnReader;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What is said of a drill's form is grammatical in each language: written by hand, checked by eye. */
class FormWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | FOLLOWER | Le temps 2 n’a rien pour le suiveur. | Ceci est demandé au suiveur, et la consigne du suiveur au temps 2 ne le dit pas.
            it | LEADER | Il tempo 2 non ha nulla per la guida. | Questo è chiesto alla guida, e la consegna della guida al tempo 2 non lo dice.
            es | LEADER | El tiempo 2 no tiene nada para el guía. | Esto se pide al guía, y el turno del guía en el tiempo 2 no lo dice.
            de | FOLLOWER | Auf Zahl 2 steht nichts für den Folgenden. | Das soll der Folgende tun, sein eigener Text auf Zahl 2 sagt es aber nicht.
            """)
    void a_partner_is_named_in_the_right_case(String language, Side side, String missing, String asked) {
        Locale locale = Locale.forLanguageTag(language);
        assertEquals(
                missing,
                Message.of(TurnMissing.class, "turn-missing.what", 2, Terms.of(side))
                        .in(locale));
        assertEquals(
                asked,
                Message.of(PartnerNotTold.class, "partner-not-told.what", Terms.of(side), 2)
                        .in(locale));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "fr", "it", "es", "de"})
    void the_turn_that_is_proposed_for_an_empty_one_is_read(String language) {
        String told = Message.of(TurnMissing.class, "turn-missing.way", Terms.of(Side.LEADER), "leader")
                .in(Locale.forLanguageTag(language));
        String turn = told.replaceFirst(".*leader: ", "").replaceFirst("\\..*", ".");
        assertTrue(TurnReader.standard().read(turn).isRead(), turn);
    }
}
