package org.drillwright.school;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Language;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TranslationFolderTest {

    private static final String DRILL = """
            title: Steps
            level: beginner
            form: solo
            weapon: none
            start: On guard, out of distance.
            opening: Salute. On guard.
            steps:
              - leader: Go!
                follower: Advance.
                distance: out
            closing: Salute.
            """;

    @TempDir
    Path root;

    private SchoolFolder with(String name, String text) throws IOException {
        Files.writeString(root.resolve("steps.yaml"), DRILL);
        Files.createDirectories(root.resolve("translations"));
        Files.writeString(root.resolve("translations").resolve(name), text);
        return SchoolFolder.open(root);
    }

    @Test
    void a_file_of_translations_is_no_drill() throws IOException {
        SchoolFolder folder = with("fr.yaml", "texts:\n  - from: Steps\n    to: Pas\n");
        assertEquals(1, folder.entries().size());
        assertEquals(List.of(), new TranslationFolder(folder).findings());
        assertEquals(
                Optional.of("Pas"),
                new TranslationFolder(folder)
                        .read(new Language("fr"))
                        .orElseThrow()
                        .value()
                        .orElseThrow()
                        .translations()
                        .of("Steps"));
    }

    @Test
    void a_name_that_is_no_language_is_an_error() throws IOException {
        List<Finding> findings = new TranslationFolder(with("french.yaml", "texts: []\n")).findings();
        assertEquals(1, findings.size());
        assertEquals(Severity.ERROR, findings.get(0).severity());
        assertEquals("translations/french.yaml", findings.get(0).file().name());
        assertTrue(
                findings.get(0).wayOut().english().contains("fr.yaml"),
                findings.get(0).wayOut().english());
    }

    @Test
    void a_turns_translation_is_held_to_the_turn() throws IOException {
        SchoolFolder folder = with("fr.yaml", "texts:\n  - from: Advance.\n    to: Rompez.\n");
        List<Finding> findings = new TranslationFolder(folder).findings();
        assertEquals(
                List.of("translation-unlike"),
                findings.stream().map(Finding::rule).toList());
        assertEquals("Rompez.", findings.get(0).file().slice(findings.get(0).span()));
        assertEquals(
                List.of(),
                new TranslationFolder(with("fr.yaml", "texts:\n  - from: Advance.\n    to: Faites un pas en avant.\n"))
                        .findings());
    }

    @Test
    void what_is_wrong_in_a_file_is_a_finding_of_that_file() throws IOException {
        List<Finding> findings = new TranslationFolder(with("de.yaml", "text: []\n")).findings();
        assertEquals(
                List.of("translations/de.yaml"),
                findings.stream().map(one -> one.file().name()).distinct().toList());
    }
}
