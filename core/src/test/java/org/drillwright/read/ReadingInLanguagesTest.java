package org.drillwright.read;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.drillwright.model.School;
import org.drillwright.source.Finding;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** What reading finds, in four languages: the grammar was looked at by eye, common practice, no source. */
class ReadingInLanguagesTest {

    /** The words of the only finding; a no-break space as {@code _}. */
    private static String said(List<Finding> findings, String language) {
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0).words().in(new Locale(language)).replace('\u00a0', '_');
    }

    /** Language; what is changed in a good drill, and to what; what is said. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "fr | [mask, jacket] | mask | «_gear_» demande une liste, mais ceci est un texte. Écrivez_: gear: [mask]",
                "it | [mask, jacket] | mask | «gear» vuole una lista, ma qui c’è un testo. Scrivete: gear: [mask]",
                "es | [mask, jacket] | mask | «gear» necesita una lista, pero aquí hay un texto. Escriba: gear: [mask]",
                "de | [mask, jacket] | mask | Zu „gear“ gehört eine Liste, hier steht aber ein Text. So schreiben: gear: [mask]",
                "fr | weapon: foil | weapon: foilet | «_foilet_» est inconnu ici. Vouliez-vous dire «_foil_»_? "
                        + "Valeurs possibles_: foil, epee, sabre, none.",
                "de | weapon: foil | weapon: foilet | „foilet“ ist hier unbekannt. War „foil“ gemeint? "
                        + "Möglich sind: foil, epee, sabre, none.",
                "it | weapon: foil | weapon foil | Mancano i due punti dopo «weapon». Di questo file non è stato letto nulla. "
                        + "Scrivete: weapon: foil",
                "es | closing: Salute. | repeat: x | «repeat» necesita un número entero de 1 a 999. Escriba solo cifras, como 2.",
                "it | closing: Salute. | closing: | Dopo «closing» non c’è nulla. Scrivete quel che ci va, o cancellate la chiave.",
                "es | closing: Salute. | swap: ja | «swap» necesita «true» o «false». Escriba una de estas dos palabras.",
                "fr | form: partner | form: | Il n’y a rien après «_form_». Écrivez ce qui doit être ici, ou supprimez la clé."
            })
    void of_a_drill(String language, String stretch, String other, String said) {
        assertEquals(said, said(Files.read(Files.with(stretch, other)).findings(), language));
    }

    /** What stands further in, of no space, one and two. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fr | 0 | Écrivez, sans espace devant_: x",
                "fr | 1 | Écrivez, avec 1 espace devant_: x",
                "it | 1 | Scrivete, con 1 spazio davanti: x",
                "it | 2 | Scrivete, con 2 spazi davanti: x",
                "es | 1 | Escriba, con 1 espacio delante: x",
                "es | 2 | Escriba, con 2 espacios delante: x",
                "de | 0 | So schreiben, ohne Leerzeichen davor: x",
                "de | 2 | So schreiben, mit 2 Leerzeichen davor: x"
            })
    void how_far_in_a_line_stands(String language, int spaces, String said) {
        Message advice = Mend.advice("   x", " ".repeat(spaces) + "x");
        assertEquals(said, advice.in(new Locale(language)).replace('\u00a0', '_'));
    }

    /** The former name stands in front of the one that came after it. */
    @Test
    void a_ring_of_former_names() {
        byte[] roster = "people: [{name: Ash, was: [Bo]}, {name: Bo, was: [Ash]}]\n".getBytes(StandardCharsets.UTF_8);
        List<String> said = new RosterReader(School.DEFAULT, List.of())
                .read("roster.yaml", roster).findings().stream()
                        .map(finding -> finding.what().in(Locale.ITALIAN))
                        .toList();
        assertEquals(
                List.of(
                        "Non è chiaro di chi si tratti: Bo → Ash → Bo.",
                        "Non è chiaro di chi si tratti: Ash → Bo → Ash."),
                said);
    }

    @Test
    void a_table_that_a_spreadsheet_has_spoilt() {
        byte[] roster = "name,knows\nAsh,1.2E+05\n".getBytes(StandardCharsets.UTF_8);
        List<Finding> findings = new RosterReader(School.DEFAULT, List.of("lunge"))
                .read("roster.csv", roster)
                .findings();
        assertEquals(
                "„1.2E+05“ ist keine Übung: Eine Tabellenkalkulation hat aus einem Namen eine Zahl gemacht. Die Spalte in der "
                        + "Tabellenkalkulation als Text formatieren und den Namen neu tippen.",
                said(findings, "de"));
        assertEquals(
                "«_1.2E+05_» n’est pas un exercice_: un tableur a remplacé un nom par un nombre. Mettez la colonne au format "
                        + "texte dans le tableur, et retapez le nom.",
                said(findings, "fr"));
    }

    /** A file of translations is written in the language of whoever asks for it, and is read back. */
    @Test
    void a_file_of_translations_has_remarks_in_the_language_that_is_spoken() {
        String text = TranslationsText.of(Map.of("Lunge", Message.plain("title")), Locale.GERMAN);
        assertEquals(
                List.of(
                        "# Die Wörter der Übungen in einer anderen Sprache. Die Übersetzung hinter „to:“ schreiben, zwischen geraden"),
                text.lines().limit(1).toList());
        assertEquals(
                List.of("texts:", "  # title", "  - from: Lunge", "    to:"),
                text.lines().skip(3).toList());
        assertEquals(
                List.of(),
                TranslationsReader.read("de.yaml", text.getBytes(StandardCharsets.UTF_8))
                        .findings());
    }

    /** Both sentences of a rule end as sentences do; in English they are told as one text. */
    @ParameterizedTest
    @EnumSource(ReadingRule.class)
    void what_is_asked_of_a_file_is_a_sentence_in_every_language(ReadingRule rule) {
        Stream.of("en", "fr", "it", "es", "de").map(Locale::new).forEach(language -> {
            assertEquals('.', last(rule.asks().in(language)), rule.id());
            assertEquals('.', last(rule.asks().then(rule.why()).in(language)), rule.id());
        });
    }

    private static char last(String words) {
        return words.charAt(words.length() - 1);
    }
}
