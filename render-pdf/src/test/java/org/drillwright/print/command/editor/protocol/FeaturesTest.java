package org.drillwright.print.command.editor.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.drillwright.print.Example;
import org.drillwright.school.SchoolFolder;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DiagnosticSeverity;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FormattingOptions;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.WorkspaceClientCapabilities;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.WorkspaceEditCapabilities;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What an author has of the server, in the example school; each expectation is read off the drill's words by hand. */
class FeaturesTest {

    private static final String DRILL = "training/second-intention.yaml";

    @TempDir
    Path folder;

    private Path school;
    private Editor editor;

    @BeforeEach
    void greet() throws IOException {
        school = Example.copyTo(folder.resolve("school"));
        WorkspaceEditCapabilities edits = new WorkspaceEditCapabilities();
        edits.setDocumentChanges(true);
        edits.setResourceOperations(List.of("rename"));
        WorkspaceClientCapabilities workspace = new WorkspaceClientCapabilities();
        workspace.setWorkspaceEdit(edits);
        ClientCapabilities can = new ClientCapabilities();
        can.setWorkspace(workspace);
        editor = Editor.greeted(can);
    }

    @AfterEach
    void leave() throws IOException {
        editor.close();
    }

    private Editor drill() throws IOException {
        editor.open(school.resolve(DRILL));
        assertEquals(List.of(), editor.findings());
        return editor;
    }

    /** The attack arrives in the high inside line, which octave does not close (Warford 1884, p. 10-17). */
    @Test
    void an_unsaved_slip_is_found_in_its_very_words_and_goes_when_it_is_mended() throws IOException {
        drill().type("Parry quarte in the lunge", "Parry octave in the lunge");
        List<Diagnostic> found = editor.findings();
        assertEquals(1, found.size());
        assertEquals("parry-misses", found.get(0).getCode().getLeft());
        assertEquals(DiagnosticSeverity.Error, found.get(0).getSeverity());
        assertEquals(editor.range("Parry octave in the lunge"), found.get(0).getRange());
        assertTrue(found.get(0).getMessage().getLeft().contains("quarte"));
        assertTrue(editor.hover("Parry octave").startsWith("parry-misses\n"));
        List<CodeAction> ways = editor.actions("Parry octave");
        assertEquals("Change to 'Parry quarte in the lunge.'", ways.get(0).getTitle());
        editor.replaceAll(editor.applied(
                ways.get(0).getEdit().getChanges().values().iterator().next()));
        assertEquals(List.of(), editor.findings());
    }

    /** The sentences were written by hand, in the words of the five languages' own halls. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | Il n’y a pas d’exercice « countr-riposte » dans ce dossier. | Remplacer par « counter-riposte »
            it | In questa cartella non c’è nessun esercizio «countr-riposte». | Cambiare in «counter-riposte»
            es | En esta carpeta no hay ningún ejercicio «countr-riposte». | Cambiar a «counter-riposte»
            de-AT | In diesem Ordner gibt es keine Übung „countr-riposte“. | In „counter-riposte“ ändern
            """)
    void what_is_found_is_said_in_the_editors_language(String locale, String said, String title) throws IOException {
        try (Editor speaking = Editor.greeted(new ClientCapabilities(), locale)) {
            speaking.open(school.resolve(DRILL));
            speaking.findings();
            speaking.type("[counter-riposte", "[countr-riposte");
            String found = speaking.findings().get(0).getMessage().getLeft().replace('\u00a0', ' ');
            assertTrue(found.startsWith(said), found);
            assertEquals(
                    title, speaking.actions("countr-riposte").get(0).getTitle().replace('\u00a0', ' '));
        }
    }

    @Test
    void a_broken_form_is_found_and_keys_are_offered_all_the_same() throws IOException {
        drill().type("repeat: 6", "re");
        assertEquals("broken-yaml", editor.findings().get(0).getCode().getLeft());
        List<String> keys = labels(editor.offers("\nre"));
        assertTrue(keys.contains("repeat"), keys.toString());
        assertFalse(keys.contains("title"), keys.toString());
    }

    /** A sign outside the Basic Multilingual Plane is two units of UTF-16, and one character. */
    @Test
    void places_are_counted_in_units_of_utf16() throws IOException {
        drill().type("needs: [counter-riposte,", "needs: [\"🤺\", countr-riposte,");
        Diagnostic slip = editor.findings().get(1);
        assertEquals(editor.range("countr-riposte"), slip.getRange());
        assertEquals(14, slip.getRange().getStart().getCharacter());
        editor.type("countr", "counter");
        assertEquals(1, editor.findings().size());
    }

    /** The parry of quarte leaves the two as the drill's next count takes them up: in the lunge, and on guard in quarte. */
    @Test
    void a_turn_is_said_back_with_the_state_it_leaves() throws IOException {
        drill();
        String told = editor.hover("Parry quarte");
        assertTrue(told.startsWith("Parry quarte.\n"), told);
        assertTrue(told.contains("leader: lunged, sixte"), told);
        assertTrue(told.contains("follower: on guard, quarte"), told);
        assertTrue(told.contains("The follower has parried and may riposte."), told);
        assertTrue(editor.hover("weap").contains("foil, epee, sabre"), told);
    }

    /** Quarte and circular sixte close the high inside line from sixte (Warford 1884); who is attacked may also step back. */
    @Test
    void what_is_possible_is_offered_in_the_drills_language() throws IOException {
        drill().type("    follower: Parry quarte.\n", "    follower: \n");
        List<String> turns = labels(editor.offers("a lunge.\n    follower: "));
        assertEquals(
                List.of("Parry quarte.", "Make a circular parry of sixte.", "Take the touch."), turns.subList(0, 3));
        assertTrue(turns.contains("Retreat."), turns.toString());
        assertFalse(turns.contains("Parry octave."), turns.toString());
    }

    @Test
    void a_french_drill_is_helped_in_french() throws IOException {
        String french = Files.readString(school.resolve(DRILL))
                .replaceAll("(?m)^((?:  -|   ) leader: ).*", "$1Parer en quarte.")
                .replaceAll("(?m)^(    follower: ).*", "$1Avancer d'un pas.")
                .replaceFirst("Avancer d'un pas", "");
        editor.open(school.resolve("training/autre.yaml"), french);
        List<String> turns = labels(editor.offers("    follower: "));
        assertTrue(turns.containsAll(List.of("Marchez.", "Rompez.")), turns.toString());
    }

    @Test
    void drills_levels_cues_and_gear_are_offered() throws IOException {
        drill().type("level: training", "level: ")
                .type("needs: [counter-riposte,", "needs: [")
                .type("gear: [mask,", "gear: [")
                .replaceAll(editor.text().replaceFirst("    distance: lunge\n", "    distance: \n"));
        assertEquals(List.of("beginner", "intermediate", "training"), labels(editor.offers("level: ")));
        assertTrue(labels(editor.offers("needs: [")).contains("counter-riposte"));
        assertTrue(labels(editor.offers("gear: [")).contains("mask"));
        assertTrue(labels(editor.offers("    distance: ")).containsAll(List.of("extension", "lunge", "out")));
    }

    @Test
    void what_has_one_right_answer_is_mended() throws IOException {
        drill().replaceAll(editor.text().replaceFirst("    distance: extension\n", ""));
        editor.findings();
        CodeAction mend = editor.actions("Parry quarte in the lunge").get(0);
        assertEquals("Add 'distance: extension'", mend.getTitle());
        assertTrue(mend.getIsPreferred());
        assertEquals("no-true-distance", mend.getDiagnostics().get(0).getCode().getLeft());
    }

    @Test
    void the_outline_has_the_counts() throws IOException {
        drill();
        List<DocumentSymbol> outline = editor
                .answer(editor.server()
                        .getTextDocumentService()
                        .documentSymbol(new DocumentSymbolParams(editor.document())))
                .stream()
                .map(symbol -> symbol.getRight())
                .toList();
        assertEquals(
                List.of("start", "opening", "count 1", "count 2", "count 3", "count 4", "closing"),
                outline.stream().map(DocumentSymbol::getName).toList());
        assertEquals(
                List.of("leader", "follower"),
                outline.get(2).getChildren().stream()
                        .map(DocumentSymbol::getName)
                        .toList());
    }

    @Test
    void a_need_leads_to_its_drill() throws IOException {
        drill();
        var found = editor.answer(editor.server()
                .getTextDocumentService()
                .definition(new DefinitionParams(editor.document(), editor.behind("needs: [counter"))));
        assertEquals(
                school.resolve("intermediate/counter-riposte.yaml").toUri().toString(),
                found.getLeft().get(0).getUri());
    }

    /** Afterwards the school is as sound as before, and nothing but the record has the old name. */
    @Test
    void a_drill_is_renamed_throughout_its_school() throws IOException {
        List<String> before = found();
        editor.open(school.resolve("intermediate/parry-of-quarte.yaml"));
        WorkspaceEdit edit = editor.answer(editor.server()
                .getTextDocumentService()
                .rename(new RenameParams(editor.document(), editor.behind("title: Parry"), "parry-of-four")));
        Editor.apply(edit);
        assertTrue(Files.exists(school.resolve("intermediate/parry-of-four.yaml")));
        assertEquals(before, found());
        for (String file : List.of("school.yaml", "roster.yaml", "classes/tonight.yaml", "terms/winter.yaml")) {
            assertFalse(Files.readString(school.resolve(file)).contains("parry-of-quarte"), file);
        }
        editor.findings(shown -> true);
        assertEquals(List.of("In record.csv the drill is still called 'parry-of-quarte'."), editor.told());
    }

    private List<String> found() throws IOException {
        return SchoolFolder.open(school).findings().stream()
                .map(finding -> finding.what().english())
                .toList();
    }

    @Test
    void a_drill_is_laid_out_as_tidy_does_it() throws IOException {
        String tidy = Files.readString(school.resolve(DRILL));
        drill().type(
                        "needs: [counter-riposte, parry-of-quarte]",
                        "needs:\n    - counter-riposte\n    -   parry-of-quarte");
        var edits = editor.answer(editor.server()
                .getTextDocumentService()
                .formatting(new DocumentFormattingParams(editor.document(), new FormattingOptions(2, true))));
        assertEquals(tidy, editor.applied(edits));
    }

    /** What is written in one file bears on another; its save is noticed without a word from the editor. */
    @Test
    void a_save_of_another_file_is_noticed() throws IOException {
        drill();
        Files.delete(school.resolve("intermediate/counter-riposte.yaml"));
        List<Diagnostic> found = editor.findings(shown -> !shown.isEmpty());
        assertEquals("needs-cannot-be-met", found.get(0).getCode().getLeft());
    }

    @Test
    void settings_classes_and_terms_are_checked() throws IOException {
        editor.open(school.resolve("school.yaml")).type("turns: joined", "turns: joind");
        assertEquals(
                editor.range("joind"),
                editor.findings(shown -> !shown.isEmpty()).get(0).getRange());
        editor.type("turns: joind", "turns: joined");
        editor.findings(List::isEmpty);
        editor.open(school.resolve("classes/tonight.yaml")).type("mode: learning", "mode: lerning");
        assertEquals(
                editor.range("lerning"),
                editor.findings(shown -> !shown.isEmpty()).get(0).getRange());
    }

    private static List<String> labels(List<CompletionItem> items) {
        return items.stream().map(CompletionItem::getLabel).toList();
    }
}
