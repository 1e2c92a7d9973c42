package org.drillwright.print.command.install;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pages as man-pages(7) asks for them: its sections, in its order; hyphens that can be copied. */
class ManualPageTest {

    private static final Map<String, String> PAGES = pages(Locale.ENGLISH);

    private static Map<String, String> pages(Locale language) {
        return WriteManual.pages(language, "2026-09-01").stream()
                .collect(Collectors.toMap(ManualPage::name, ManualPage::source));
    }

    private static List<String> sections(String page) {
        return page.lines()
                .filter(line -> line.startsWith(".SH "))
                .map(line -> line.substring(5, line.length() - 1))
                .toList();
    }

    @Test
    void each_command_has_a_page() {
        assertTrue(PAGES.keySet()
                .containsAll(List.of("drillwright", "drillwright-check", "drillwright-cards", "drillwright-identify")));
        PAGES.values()
                .forEach(page -> assertTrue(
                        page.contains("\\fBdrillwright"),
                        () -> "no synopsis: " + page.lines().findFirst()));
    }

    @Test
    void sections_stand_in_the_usual_order() {
        assertEquals(
                List.of("NAME", "SYNOPSIS", "DESCRIPTION", "OPTIONS", "EXIT STATUS", "CAUTIONS", "SEE ALSO"),
                sections(PAGES.getOrDefault("drillwright-check", "")));
        assertEquals(
                List.of(
                        "NAME",
                        "SYNOPSIS",
                        "DESCRIPTION",
                        "COMMANDS",
                        "OPTIONS",
                        "EXIT STATUS",
                        "CAUTIONS",
                        "SEE ALSO"),
                sections(PAGES.getOrDefault("drillwright", "")));
    }

    /** The names that {@code lexgrog} of man-db knows the first section by (src/lexgrog.l), and manpages-l10n the others; from memory. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | NOM SYNOPSIS DESCRIPTION OPTIONS CODE DE RETOUR PRÉCAUTIONS VOIR AUSSI | Aucune vérification ne rend un exercice sûr.
            it | NOME SINTASSI DESCRIZIONE OPZIONI STATO D’USCITA AVVERTENZE VEDERE ANCHE | Nessun controllo rende sicuro un esercizio.
            es | NOMBRE SINOPSIS DESCRIPCIÓN OPCIONES ESTADO DE SALIDA PRECAUCIONES VÉASE TAMBIÉN | Ninguna comprobación hace seguro un ejercicio.
            de | BEZEICHNUNG ÜBERSICHT BESCHREIBUNG OPTIONEN EXIT\\-STATUS VORSICHT SIEHE AUCH | Keine Prüfung macht eine Übung sicher.
            """)
    void other_languages_have_their_own_sections_and_words(String language, String sections, String caution) {
        Map<String, String> pages = pages(Locale.forLanguageTag(language));
        assertEquals(PAGES.keySet(), pages.keySet());
        assertEquals(sections, String.join(" ", sections(pages.getOrDefault("drillwright-check", ""))));
        pages.forEach((name, page) -> assertTrue(page.contains(caution), name));
        pages.forEach((name, page) -> assertFalse(page.contains("%n"), name));
    }

    @Test
    void commands_stand_by_what_one_is_doing() {
        String page = PAGES.getOrDefault("drillwright", "");
        assertTrue(page.contains("\n.SS \"Teach\"\n.TP\n\\fBlesson\\fR\nIn class: "), page);
    }

    @Test
    void options_are_named_as_they_are_typed() {
        String cards = PAGES.getOrDefault("drillwright-cards", "");
        assertTrue(cards.contains("\n.TP\n\\fB\\-\\-card=SIZE\\fR\n"), cards);
        assertTrue(cards.contains("\\-\\-test\\-sheet"), cards);
    }

    @Test
    void no_line_can_be_taken_for_a_macro_that_is_none() {
        PAGES.forEach((name, page) -> page.lines()
                .filter(line -> line.startsWith("."))
                .forEach(line -> assertTrue(line.matches("\\.(TH|SH|SS|TP|PP)( .*)?"), name + ": " + line)));
        assertEquals("\\&.yaml is the ending", words(".yaml is the ending"));
        assertEquals("C:\\edrills", words("C:\\drills"));
    }

    private static String words(String text) {
        return new Roff("x", "2026-09-01", "X")
                .plain(text)
                .toString()
                .lines()
                .reduce((one, two) -> two)
                .orElse("");
    }

    @Test
    void no_page_says_that_a_drill_is_safe() {
        PAGES.forEach((name, page) -> assertTrue(page.contains("No check makes a drill safe."), name));
        PAGES.forEach((name, page) -> assertFalse(page.contains("%n"), name));
    }

    @Test
    void pages_and_script_are_written_where_they_are_packed_from(@TempDir Path folder) throws IOException {
        WriteManual.main(new String[] {folder.toString(), "2026-09-01"});
        for (String place : List.of("man1", "fr/man1", "it/man1", "es/man1", "de/man1")) {
            try (Stream<Path> pages = Files.list(folder.resolve("man").resolve(place))) {
                assertEquals(
                        PAGES.keySet().stream()
                                .map(name -> name + ".1")
                                .sorted()
                                .toList(),
                        pages.map(page -> page.getFileName().toString())
                                .sorted()
                                .toList());
            }
        }
        assertTrue(Files.size(folder.resolve("completion/drillwright")) > 0);
    }
}
