package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.drillwright.model.Language;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What is said in each language of the record of prints, and of booklets and pages. Expected sentences are from memory of
 * each language's grammar; a space at which no line may break is written as any other.
 */
class SpokenPrintsTest {

    @TempDir
    Path folder;

    @BeforeEach
    void school() {
        SchoolFiles.sound(folder);
    }

    private String said(String language, String... arguments) {
        Trial trial = Trial.run(
                folder,
                Stream.concat(Stream.of(arguments), Stream.of("--speak", language))
                        .toArray(String[]::new));
        return (trial.out() + trial.err()).replace('\u00A0', ' ').strip();
    }

    private String printed(String drill, String date) throws IOException {
        said("en", "cards", "--changed", "--set", "thrusts", "--date", date);
        return Files.readAllLines(folder.resolve("prints.csv")).stream()
                .filter(line -> line.contains("," + drill + ","))
                .map(line -> line.split(",")[1])
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | Nothing to print: every card is the same as when it was last printed.
                    fr | Rien à imprimer : chaque carte est la même qu’à sa dernière impression.
                    it | Niente da stampare: ogni scheda è uguale a quando è stata stampata l’ultima volta.
                    es | Nada que imprimir: todas las tarjetas están igual que cuando se imprimieron por última vez.
                    de | Nichts zu drucken: Jede Karte ist noch so, wie sie zuletzt gedruckt wurde.
                    """)
    void nothing_has_changed(String language, String sentence) throws IOException {
        printed("riposte", "2026-03-01");
        assertEquals(sentence, said(language, "cards", "--changed", "--set", "thrusts"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | : this card is current. Printed on 2026-03-01 (a6). | : older version, printed on 2026-03-01 (a6). The current mark is M. Take it off the ring.
                    fr | : cette carte est à jour. Imprimée le 1er mars 2026 (a6). | : ancienne version, imprimée le 1er mars 2026 (a6). La marque actuelle est M. Retirez-la de l’anneau.
                    it | : questa scheda è aggiornata. Stampata il giorno 1º marzo 2026 (a6). | : versione precedente, stampata il giorno 1º marzo 2026 (a6). Il contrassegno attuale è M. Toglietela dall’anello.
                    es | : esta tarjeta está al día. Impresa el 1 de marzo de 2026 (a6). | : versión anterior, impresa el 1 de marzo de 2026 (a6). La marca actual es M. Quítela de la anilla.
                    de | : Diese Karte ist aktuell. Gedruckt am 1. März 2026 (a6). | : ältere Fassung, gedruckt am 1. März 2026 (a6). Die jetzige Marke ist M. Die Karte vom Ring nehmen.
                    """)
    void a_card_in_the_hand(String language, String current, String older) throws IOException {
        String mark = printed("riposte", "2026-03-01");
        String named = "Parry of quarte, straight riposte (riposte)" + (language.equals("fr") ? " " : "");
        assertEquals(named + current, said(language, "identify", mark));
        new SchoolFiles(folder)
                .with("riposte.yaml", SchoolFiles.riposte().replace("Arrive softly", "Arrive very softly"));
        String told = said(language, "identify", mark);
        assertEquals(named + older, told.replaceAll("[0-9A-Z]{4}-[0-9A-Z]{4}", "M"));
    }

    /** As they stand in a sentence; from memory. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | English, French, Italian, Spanish, German
                    fr | anglais, français, italien, espagnol, allemand
                    it | inglese, francese, italiano, spagnolo, tedesco
                    es | inglés, francés, italiano, español, alemán
                    de | Englisch, Französisch, Italienisch, Spanisch, Deutsch
                    """)
    void languages_have_names(String language, String names) {
        assertEquals(
                names,
                Message.listed(Language.all().stream().map(Terms::of).toList()).in(Locale.forLanguageTag(language)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | b.pdf: 3 drills, 9 pages, on 9 sheets of A4. Print on both sides at 100 % (actual size), turned over the short edge; fold them one inside the other.
                    fr | b.pdf : 3 exercices, 9 pages, sur 9 feuilles A4. À imprimer recto verso à 100 % (taille réelle), en tournant sur le petit côté ; pliez les feuilles l’une dans l’autre.
                    it | b.pdf: 3 esercizi, 9 pagine, su 9 fogli A4. Da stampare fronte e retro al 100 % (dimensioni reali), voltando sul lato corto; piegate i fogli l’uno dentro l’altro.
                    es | b.pdf: 3 ejercicios, 9 páginas, en 9 hojas A4. Para imprimir a doble cara al 100 % (tamaño real), girando por el lado corto; doble las hojas una dentro de otra.
                    de | b.pdf: 3 Übungen, 9 Seiten, auf 9 Blatt A4. Beidseitig mit 100 % drucken (wahre Größe), über die kurze Kante gewendet; die Bögen ineinander falten.
                    """)
    void a_booklet(String language, String sentence) {
        String told = said(language, "booklet", "--sheet", "a4", "--out", "b.pdf");
        assertEquals(
                sentence, told.replaceAll("\\b\\d+ (?=(page|pagin|págin|Seite|sheet|feuille|fogli|hoja|Blatt))", "9 "));
    }

    @Test
    void a_page_for_a_phone() {
        String told = said("de", "handout", "thrusts", "--html", "--out", "p.html");
        assertEquals(
                "p.html: die Sicherheitskarte und 2 Übungen, eine Seite von 9 kB. Ans Telefon schicken und dort öffnen;"
                        + " die Seite braucht kein Netz.",
                told.replaceAll("\\d+ kB", "9 kB"));
    }
}
