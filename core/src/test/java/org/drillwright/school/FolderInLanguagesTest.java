package org.drillwright.school;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drillwright.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a folder's files, in four languages: the grammar was looked at by eye, common practice, no source. */
class FolderInLanguagesTest {

    @TempDir
    Path root;

    private static String said(List<Finding> findings, String language) {
        assertEquals(1, findings.size(), findings::toString);
        return findings.get(0).words().in(new Locale(language)).replace('\u00a0', '_');
    }

    private void write(String name, String text) throws IOException {
        Path file = root.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    @Test
    void of_two_rosters() throws IOException {
        write("roster.yaml", "people: []\n");
        write("roster.csv", "name\nAsh\n");
        List<Finding> findings = ClassFolder.open(SchoolFolder.open(root)).findings();
        assertEquals(
                "Diese Liste wurde nicht gelesen, weil es auch roster.yaml gibt. Eine der beiden behalten.",
                said(findings, "de"));
        assertEquals(
                "Esta lista no se ha leído, porque también está roster.yaml. Conserve una de las dos.",
                said(findings, "es"));
    }

    /** One, two and three links. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fr | 1 | C’est un lien ou un périphérique, pas un fichier_; il n’a pas été lu.",
                "fr | 2 | Ceci et 1 autre sont des liens ou des périphériques, pas des fichiers_; ils n’ont pas été lus.",
                "it | 2 | Questo e 1 altro sono collegamenti o dispositivi, non file; non sono stati letti.",
                "it | 3 | Questo e altri 2 sono collegamenti o dispositivi, non file; non sono stati letti.",
                "de | 2 | Das hier und 1 weiteres sind Verknüpfungen oder Geräte, keine Dateien; sie wurden nicht gelesen.",
                "es | 3 | Esto y 2 más son enlaces o dispositivos, no archivos; no se han leído."
            })
    void of_links(String language, int links, String said) {
        List<Path> odd = List.of(root.resolve("a.yaml"), root.resolve("b.yaml"), root.resolve("c.yaml"));
        Finding finding = OddFiles.note(root, odd.subList(0, links)).orElseThrow();
        assertEquals(said, finding.what().in(new Locale(language)).replace('\u00a0', '_'));
    }

    @Test
    void of_a_translation_that_is_read_otherwise() throws IOException {
        SchoolFolder school = SchoolFolder.of(root, new Unsaved(Map.of(root.resolve("parry.yaml"), """
                        title: Parry
                        level: intermediate
                        form: partner
                        weapon: foil
                        steps:
                          - {leader: Extend and lunge., follower: Parry quarte.}
                        """)));
        write("translations/fr.yaml", "texts:\n  - {from: Parry quarte., to: Parez sixte.}\n");
        List<Finding> findings = new TranslationFolder(school).findings();
        assertEquals(
                "Questo si legge come «Parry sixte.», quindi le schede non usano questa traduzione di «Parry quarte.». Dite la "
                        + "stessa cosa con parole che vengono lette («drillwright words» mostra come), o lasciate vuoto.",
                said(findings, "it"));
        assertEquals(
                "Das wird als „Parry sixte.“ gelesen; deshalb verwenden die Karten diese Übersetzung von „Parry quarte.“ nicht. "
                        + "Dasselbe mit Wörtern sagen, die gelesen werden („drillwright words“ zeigt, wie), oder leer lassen.",
                said(findings, "de"));
    }
}
