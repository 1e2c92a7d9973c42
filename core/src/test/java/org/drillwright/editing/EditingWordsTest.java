package org.drillwright.editing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.drillwright.model.Side;
import org.drillwright.notation.Line;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an author is told while writing is grammatical in each language: written by hand, checked by eye. */
class EditingWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en | The leader has the attack to the low outside line; the follower has yet to answer it.
            fr | Le meneur a l’attaque dans la ligne basse du dehors ; le suiveur doit encore y répondre.
            it | La guida ha l’attacco nella linea bassa esterna; il compagno deve ancora rispondervi.
            es | El guía está atacando a la línea baja exterior; el seguidor todavía debe contestar.
            de | Der Führende greift in die untere äußere Linie an; der Folgende muss noch darauf antworten.
            """)
    void who_has_the_attack(String language, String said) {
        Message threat = Message.of(
                TurnTold.class,
                "threat.line",
                Terms.of(Side.LEADER),
                Terms.of(Side.FOLLOWER),
                Terms.of(Line.LOW_OUTSIDE));
        assertEquals(said, threat.capital().in(Locale.forLanguageTag(language)).replace('\u00a0', ' '));
    }
}
