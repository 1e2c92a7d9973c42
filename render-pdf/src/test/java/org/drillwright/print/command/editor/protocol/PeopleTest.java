package org.drillwright.print.command.editor.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import org.drillwright.print.Example;
import org.drillwright.school.ClassFolder;
import org.drillwright.school.SchoolFolder;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.FileRename;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.ReferenceContext;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameFilesParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What who writes a roster, a class or a term has of the server; each expectation is read off the example's files by hand. */
class PeopleTest {

    private static final String CLASS = "classes/tonight.yaml";
    private static final String TERM = "terms/winter.yaml";

    @TempDir
    Path folder;

    private Path school;
    private Editor editor;

    @BeforeEach
    void greet() throws IOException {
        school = Example.copyTo(folder.resolve("school"));
        editor = Editor.greeted(new ClientCapabilities());
    }

    @AfterEach
    void leave() throws IOException {
        editor.close();
    }

    private static List<String> labels(List<CompletionItem> items) {
        return items.stream().map(CompletionItem::getLabel).toList();
    }

    @Test
    void a_class_is_offered_its_keys_its_words_its_people_and_its_drills() throws IOException {
        editor.open(school.resolve(CLASS));
        List<String> people = labels(editor.offers("\naway: ["));
        assertTrue(people.containsAll(List.of("Ash", "Bo", "Marlow")), people.toString());
        assertEquals(
                List.of("learning", "training"),
                labels(editor.offers("\nmode: ")).stream().sorted().toList());
        editor.type("drills:\n", "le\ndrills:\n");
        List<String> keys = labels(editor.offers("\nle"));
        assertTrue(keys.contains("left-over"), keys.toString());
        assertFalse(keys.contains("minutes"), "it stands there already");
        editor.type("le\ndrills:\n", "drills:\n  - \n");
        assertTrue(labels(editor.offers("drills:\n  - ")).contains("one-two"));
        editor.type("  parry-of-sixte: {value", "  \n  parry-of-sixte: {value");
        List<String> special = labels(editor.offers("repetitions: 3}\n  "));
        assertTrue(special.contains("one-two"), special.toString());
        editor.type("parry-of-sixte: {value: 3, must: yes}", "parry-of-sixte:\n    mu");
        assertEquals(
                List.of("must"),
                labels(editor.offers("\n    mu")).stream()
                        .filter(key -> key.startsWith("mu"))
                        .toList());
    }

    @Test
    void a_term_and_a_roster_are_offered_them_too() throws IOException {
        editor.open(school.resolve(TERM));
        List<String> away = labels(editor.offers("away: ["));
        assertTrue(away.containsAll(List.of("Ash", "Zed")), away.toString());
        List<String> taught = labels(editor.offers("    drills: ["));
        assertTrue(taught.containsAll(List.of("intermediate", "one-two")), taught.toString());
        editor.open(school.resolve("roster.yaml"));
        assertEquals(
                List.of("left", "right"),
                labels(editor.offers(", hand: ")).stream().sorted().toList());
        assertTrue(labels(editor.offers("apart: [")).contains("Ash"));
        List<String> known = labels(editor.offers("knows: ["));
        assertTrue(known.containsAll(List.of("beginner", "one-two")), known.toString());
        editor.type("people:\n", "people:\n  - name: New\n    sk\n");
        assertTrue(labels(editor.offers("\n    sk")).contains("skill"));
        editor.type("    sk\n", "    apart: [\n");
        assertTrue(labels(editor.offers("    apart: [")).contains("Ash"), "known from before it was broken");
    }

    @Test
    void keys_and_names_are_told() throws IOException {
        editor.open(school.resolve(CLASS)).type("away: []", "away: [Bo]");
        assertTrue(editor.hover("\nmod").startsWith("mode\n"), editor.hover("\nmod"));
        assertTrue(editor.hover("away: [B").startsWith("Bo\nintermediate\nright hand\nskill 48\n"));
        assertTrue(editor.hover("  - parry-of-q")
                .startsWith("Parry of quarte and straight riposte\nintermediate, partner, foil\n"));
        editor.open(school.resolve("roster.yaml"));
        assertTrue(editor.hover("assis").contains("People who help you and do not train."));
        assertTrue(editor.hover(", skil").contains("0 to 99"));
    }

    @Test
    void a_name_leads_to_its_line_of_the_roster() throws IOException {
        editor.open(school.resolve(CLASS)).type("away: []", "away: [Bo]");
        Location found = editor.answer(editor.server()
                        .getTextDocumentService()
                        .definition(new DefinitionParams(editor.document(), editor.behind("away: [B"))))
                .getLeft()
                .get(0);
        assertEquals(school.resolve("roster.yaml").toUri().toString(), found.getUri());
        assertEquals(
                "  - {name: Bo, level: intermediate,",
                Files.readAllLines(school.resolve("roster.yaml"))
                        .get(found.getRange().getStart().getLine())
                        .substring(0, 35));
        assertEquals(11, found.getRange().getStart().getCharacter());
        ReferenceParams asked =
                new ReferenceParams(editor.document(), editor.behind("away: [B"), new ReferenceContext(true));
        List<String> named = editor
                .answer(editor.server().getTextDocumentService().references(asked))
                .stream()
                .map(one -> one.getUri().replaceFirst(".*/", ""))
                .toList();
        assertEquals(List.of("roster.yaml", "tonight.yaml", "winter.yaml"), named);
    }

    /** Afterwards Bo's record is Bea's, and no file but the record, which is never written anew, says another name. */
    @Test
    void somebody_is_renamed_throughout_the_school() throws IOException {
        int signed =
                ClassFolder.open(SchoolFolder.open(school)).history().entries().size();
        editor.open(school.resolve(TERM));
        WorkspaceEdit edit = editor.answer(editor.server()
                .getTextDocumentService()
                .rename(new RenameParams(editor.document(), editor.behind("away: [B"), "Bea")));
        apply(edit);
        assertTrue(Files.readString(school.resolve("roster.yaml")).contains("{name: Bea, was: [Bo], level"));
        assertTrue(Files.readString(school.resolve(TERM)).contains("away: [Bea, Kit]"));
        ClassFolder after = ClassFolder.open(SchoolFolder.open(school));
        assertEquals(List.of(), after.findings());
        assertEquals(signed, after.history().entries().size());
        assertTrue(after.roster().orElseThrow().names().contains("Bea"));
    }

    private void apply(WorkspaceEdit edit) throws IOException {
        for (Map.Entry<String, List<TextEdit>> one : edit.getChanges().entrySet()) {
            Path file = Path.of(java.net.URI.create(one.getKey()));
            Files.writeString(file, Editor.applied(Files.readString(file), one.getValue()));
        }
    }

    @Test
    void a_name_that_somebody_has_is_refused() throws IOException {
        editor.open(school.resolve(TERM));
        List<String> refused = new ArrayList<>();
        for (String name : List.of("Cy", " ")) {
            var asked = editor.server()
                    .getTextDocumentService()
                    .rename(new RenameParams(editor.document(), editor.behind("away: [B"), name));
            refused.add(assertThrows(ExecutionException.class, () -> asked.get(60, TimeUnit.SECONDS))
                    .getCause()
                    .getMessage());
        }
        assertEquals(List.of("There is, or was, a 'Cy' on the roster already.", "A new name can't be empty."), refused);
    }

    /** The editor renames the file by itself; nothing else names the drill afterwards by its old name but the record. */
    @Test
    void a_file_that_the_editor_renames_takes_its_name_along() throws IOException {
        Path old = school.resolve("intermediate/parry-of-quarte.yaml");
        Path now = school.resolve("intermediate/parry-of-four.yaml");
        WorkspaceEdit edit = editor.answer(editor.server()
                .getWorkspaceService()
                .willRenameFiles(new RenameFilesParams(List.of(
                        new FileRename(old.toUri().toString(), now.toUri().toString())))));
        apply(edit);
        Files.move(old, now);
        for (String file : List.of("school.yaml", "roster.yaml", CLASS, TERM)) {
            assertFalse(Files.readString(school.resolve(file)).contains("parry-of-quarte"), file);
        }
        assertTrue(SchoolFolder.open(school).entry("parry-of-four").isPresent());
    }
}
