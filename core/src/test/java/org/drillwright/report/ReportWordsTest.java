package org.drillwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a report sums up is grammatical in each language: written by hand, checked by eye. */
class ReportWordsTest {

    private static final Judged JUDGED =
            new Judged(9, List.of(new Judged.Gap("a", List.of(2), List.of("opening"))), List.of("b.yaml"));

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | 1 exercice : 2 erreurs, aucun avertissement, 1 remarque | 9 temps ; jugés : 8, non jugés : 1 (a : ouverture, 2). Pas jugé du tout : b.yaml
            it | 1 esercizio: 2 errori, nessun avviso, 1 nota | 9 tempi; giudicati: 8, non giudicati: 1 (a: apertura, 2). Non giudicato affatto: b.yaml
            es | 1 ejercicio: 2 errores, ninguna advertencia, 1 nota | 9 tiempos; juzgados: 8, no juzgados: 1 (a: apertura, 2). Sin juzgar en absoluto: b.yaml
            de | 1 Übung: 2 Fehler, keine Warnungen, 1 Hinweis | 9 Zahlen: 8 beurteilt, 1 nicht (a: Beginn, 2). Gar nicht beurteilt: b.yaml
            """)
    void what_was_found_and_what_was_judged(String language, String tally, String judged) {
        Locale locale = Locale.forLanguageTag(language);
        assertEquals(tally, new RunSummary(1, 2, 0, 1).sentence().in(locale).replace('\u00a0', ' '));
        assertEquals(judged, JUDGED.sentence().in(locale).replace('\u00a0', ' '));
    }
}
