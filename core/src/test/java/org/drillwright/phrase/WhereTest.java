package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.drillwright.notation.Measure;
import org.drillwright.wording.Message;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Places and measures as they stand within a sentence; prepositions and articles by each language's grammar, from memory. */
class WhereTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en | count 2  | since count 2     | on count 2
            fr | temps 2  | depuis le temps 2 | au temps 2
            it | tempo 2  | dal tempo 2       | al tempo 2
            es | tiempo 2 | desde el tiempo 2 | en el tiempo 2
            de | Zahl 2   | seit Zahl 2       | auf Zahl 2
            """)
    void counts(String language, String plain, String since, String on) {
        Locale locale = Locale.forLanguageTag(language);
        assertEquals(plain, Where.count(2).in(locale));
        assertEquals(since, Where.count(2).in(locale, "since"));
        assertEquals(on, Where.count(2).in(locale, "on"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en | opening | the opening  | since the opening
            fr | opening | l’ouverture  | depuis l’ouverture
            it | opening | l’apertura   | dall’apertura
            es | closing | el cierre    | desde el cierre
            de | start   | der Start    | seit dem Start
            """)
    void parts_around_the_counts(String language, String part, String plain, String since) {
        Locale locale = Locale.forLanguageTag(language);
        assertEquals(plain, Where.part(part).in(locale));
        assertEquals(since, Where.part(part).in(locale, "since"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            en | at lunge distance or further away            | at an unknown distance
            fr | à distance de fente ou plus loin             | à une distance inconnue
            it | a giusta misura o più lontano                | a misura sconosciuta
            es | a distancia de fondo o más lejos             | a una distancia desconocida
            de | in mittlerer Mensur oder weiter entfernt        | in unbekannter Mensur
            """)
    void measures_that_are_not_known_exactly(String language, String further, String unknown) {
        Locale locale = Locale.forLanguageTag(language);
        Message range = Range.of(Measure.OUT).shift(-1).words();
        assertEquals(further, range.in(locale, "at"));
        assertEquals(unknown, Range.UNKNOWN.words().in(locale, "at"));
    }
}
