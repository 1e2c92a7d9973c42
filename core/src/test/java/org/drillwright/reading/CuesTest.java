package org.drillwright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.drillwright.notation.Measure;
import org.drillwright.notation.MeasureCue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Distance cues in the words of several languages. Italian: the handbooks' measures are stretta (touching with the arm alone),
 * giusta (with the lunge) and camminando (with a step and the lunge); from memory. The others: common practice, no source.
 */
class CuesTest {

    private static final TurnReader READER = TurnReader.standard();

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | lunge                                | lunge
                    en | lunging distance                     | lunge
                    en | lunge distance to extension distance | lunge to extension
                    en | from advance-lunge to lunge          | advance-lunge to lunge
                    en | riposte distance                     | extension
                    en | extension of the arm                 | extension
                    en | one step and a lunge                 | advance-lunge
                    en | allonge                              | lunge
                    fr | fente                                | lunge
                    fr | fente à allongement du bras          | lunge to extension
                    fr | d'allonge à fente                    | extension to lunge
                    fr | de la fente à l'allongement          | lunge to extension
                    fr | marche-fente à fente                 | advance-lunge to lunge
                    fr | un pas et une fente                  | advance-lunge
                    fr | à distance de marche et fente        | advance-lunge
                    fr | hors de mesure                       | out
                    fr | corps à corps                        | close
                    fr | lunge to extension                   | lunge to extension
                    it | affondo - distensione                | lunge to extension
                    it | da distensione del braccio ad affondo | extension to lunge
                    it | dalla giusta misura alla misura stretta | lunge to extension
                    it | misura camminando                    | advance-lunge
                    it | da affondo a passo avanti e affondo  | lunge to advance-lunge
                    it | fuori misura                         | out
                    it | corpo a corpo                        | close
                    es | fondo                                | lunge
                    es | de fondo a extensión                 | lunge to extension
                    es | distancia de marcha y fondo          | advance-lunge
                    es | un paso y un fondo                   | advance-lunge
                    es | a distancia de respuesta             | extension
                    es | fuera de distancia                   | out
                    es | cuerpo a cuerpo                      | close
                    de | Ausfall                              | lunge
                    de | Ausfallmensur                        | lunge
                    de | von Ausfall bis Armstreckung         | lunge to extension
                    de | enge Mensur                          | extension
                    de | weite Mensur                         | advance-lunge
                    de | Schritt und Ausfall                  | advance-lunge
                    de | außer Mensur                         | out
                    """)
    void a_cue_is_read(String language, String words, String measures) {
        assertEquals(Optional.of(measures), READER.cue(words, language).map(MeasureCue::toString));
    }

    @ParameterizedTest
    @CsvSource({
        "en, a bit further",
        "en, three steps",
        "en, two steps and a lunge",
        "en, half lunge",
        "en, retreat",
        "en, 2",
        "fr, un peu plus loin",
        "fr, deux pas et fente",
        "fr, demi-fente",
        "it, mezzo affondo",
        "it, due passi e affondo",
        "es, medio fondo",
        "es, dos pasos y fondo",
        "de, halber Ausfall",
        "de, zwei Schritte und Ausfall"
    })
    void anything_else_is_none(String language, String words) {
        assertEquals(Optional.empty(), READER.cue(words, language));
    }

    @Test
    void every_cue_is_read_as_it_is_said() {
        for (String language : READER.tags()) {
            for (Measure from : Measure.values()) {
                for (Measure to : Measure.values()) {
                    MeasureCue cue = new MeasureCue(from, to);
                    assertEquals(Optional.of(cue), READER.cue(READER.cue(cue, language), language));
                }
            }
        }
    }
}
