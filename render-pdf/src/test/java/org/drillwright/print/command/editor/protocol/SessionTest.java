package org.drillwright.print.command.editor.protocol;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import org.drillwright.print.command.editor.workspace.Document;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.jsonrpc.ResponseErrorException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** How a talk begins, goes wrong, and ends (LSP 3.17, Base Protocol and Lifecycle Messages). */
class SessionTest {

    private static final String DRILL = """
            title: Steps
            level: beginner
            form: solo
            weapon: none
            gear: [glove]
            start: On guard, out of distance.
            opening: Salute. On guard.
            steps:
              - leader: Advance!
                follower: Advance one step.
                distance: out
              - leader: Retreat!
                follower: Retreat one step.
                distance: out
            closing: Salute.
            """;

    @TempDir
    Path folder;

    private static int code(CompletableFuture<?> refused) {
        ExecutionException problem = assertThrows(ExecutionException.class, () -> refused.get(60, TimeUnit.SECONDS));
        return ((ResponseErrorException) problem.getCause()).getResponseError().getCode();
    }

    private static HoverParams nowhere() {
        return new HoverParams(new TextDocumentIdentifier("file:///nowhere.yaml"), new Position(3, 3));
    }

    @Test
    void who_takes_leave_properly_is_answered_with0() throws IOException {
        assertTrue(Editor.greeted(new ClientCapabilities()).leave());
    }

    @Test
    void who_hangs_up_is_not() throws IOException {
        assertFalse(Editor.greeted(new ClientCapabilities()).hangUp());
        assertFalse(new Editor().hangUp());
    }

    @Test
    void exit_without_shutdown_is_no_leave() throws IOException {
        Editor editor = Editor.greeted(new ClientCapabilities());
        editor.server().exit();
        assertFalse(editor.hangUp());
    }

    @Test
    void nothing_is_answered_before_the_greeting_nor_after_the_farewell() throws IOException {
        try (Editor editor = new Editor()) {
            assertEquals(-32002, code(editor.server().getTextDocumentService().hover(nowhere())));
            InitializeParams greeting = new InitializeParams();
            greeting.setCapabilities(new ClientCapabilities());
            editor.answer(editor.server().initialize(greeting));
            assertEquals(-32600, code(editor.server().initialize(greeting)));
            editor.answer(editor.server().shutdown());
            assertEquals(-32600, code(editor.server().getTextDocumentService().hover(nowhere())));
        }
    }

    @Test
    void of_a_text_that_is_not_open_there_is_nothing_to_say() throws IOException {
        try (Editor editor = Editor.greeted(new ClientCapabilities())) {
            assertEquals(
                    null, editor.answer(editor.server().getTextDocumentService().hover(nowhere())));
        }
    }

    /** An error of JSON-RPC 2.0 each time, and the talk goes on. */
    @Test
    void garbage_in_a_message_is_refused_and_the_talk_goes_on() throws IOException {
        try (Editor editor = Editor.greeted(new ClientCapabilities())) {
            for (String body : List.of(
                    "{",
                    "[]",
                    "nothing",
                    "{\"jsonrpc\":\"2.0\",\"id\":900,\"method\":\"textDocument/hover\",\"params\":7}",
                    "{\"jsonrpc\":\"2.0\",\"id\":901,\"method\":\"no/such\",\"params\":{}}",
                    "{\"jsonrpc\":\"2.0\",\"method\":\"$/cancelRequest\",\"params\":{\"id\":12345}}",
                    "{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didChange\",\"params\":{}}",
                    "{\"jsonrpc\":\"2.0\",\"method\":\"textDocument/didOpen\",\"params\":{\"textDocument\":"
                            + "{\"uri\":\":\",\"languageId\":\"yaml\",\"version\":1,\"text\":\"\\ud83e\"}}}")) {
                byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
                editor.wire()
                        .write(("Content-Length: " + bytes.length + "\r\n\r\n").getBytes(StandardCharsets.US_ASCII));
                editor.wire().write(bytes);
                editor.wire().flush();
            }
            assertEquals(
                    null, editor.answer(editor.server().getTextDocumentService().hover(nowhere())));
            assertTrue(editor.leave());
        }
    }

    @Test
    void a_question_can_be_taken_back() throws IOException {
        try (Editor editor = Editor.greeted(new ClientCapabilities())) {
            CompletableFuture<?> asked =
                    editor.server().getTextDocumentService().hover(nowhere());
            asked.cancel(true);
            assertThrows(CancellationException.class, asked::join);
            assertTrue(editor.leave());
        }
    }

    @Test
    void a_drill_that_lies_in_no_school_is_checked_alone() throws IOException {
        Files.writeString(folder.resolve("other.yaml"), "no drill: at all\n");
        try (Editor editor = Editor.greeted(new ClientCapabilities())) {
            editor.open(folder.resolve("new.yaml"), DRILL);
            assertEquals(List.of(), editor.findings());
            editor.type("level: beginner", "level: beginer");
            assertEquals("unknown-word", editor.findings().get(0).getCode().getLeft());
        }
    }

    @Test
    void a_file_that_is_no_drill_is_let_be() throws IOException {
        try (Editor editor = Editor.greeted(new ClientCapabilities())) {
            editor.open(folder.resolve("compose.yaml"), "services: {a: b}\n");
            assertEquals("", editor.hover("serv"));
            editor.open(folder.resolve("new.yaml"), DRILL);
            assertEquals(List.of(), editor.findings());
        }
    }

    @Test
    void a_text_that_is_too_long_is_refused_with_one_finding() throws IOException {
        Files.writeString(folder.resolve("school.yaml"), "name: A school\n");
        Path file = folder.resolve("long.yaml");
        try (Editor editor = Editor.greeted(new ClientCapabilities())) {
            editor.open(file, "a".repeat(Document.MOST + 1));
            Diagnostic only = editor.findings().get(0);
            assertEquals("text-empty-or-too-long", only.getCode().getLeft());
            assertTrue(only.getMessage().getLeft().startsWith("This text has more than 2097152 characters"));
            editor.replaceAll("#".repeat(300_000));
            assertEquals(1, editor.findings().size());
            editor.replaceAll(DRILL);
            editor.findings(List::isEmpty);
        }
    }
}
