package org.drillwright.print.command.editor.protocol;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import org.eclipse.lsp4j.ClientCapabilities;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionContext;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.Diagnostic;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.MessageActionItem;
import org.eclipse.lsp4j.MessageParams;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PublishDiagnosticsParams;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ShowMessageRequestParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.VersionedTextDocumentIdentifier;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.Launcher;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.launch.LSPLauncher;
import org.eclipse.lsp4j.services.LanguageClient;
import org.eclipse.lsp4j.services.LanguageServer;

/** An editor that has one text open, and knows the server by LSP4J's own client. */
final class Editor implements LanguageClient, AutoCloseable {

    /** Seconds to wait for an answer; a busy machine takes its time. */
    private static final int PATIENCE = 60;

    private final PipedOutputStream toServer = new PipedOutputStream();
    private final CompletableFuture<Boolean> end;
    private final LanguageServer server;
    private final BlockingQueue<PublishDiagnosticsParams> published = new LinkedBlockingQueue<>();
    private final List<String> told = new ArrayList<>();
    private String uri = "";
    private String text = "";
    private int version;

    Editor() throws IOException {
        PipedInputStream in = new PipedInputStream(toServer, 1 << 16);
        PipedOutputStream out = new PipedOutputStream();
        PipedInputStream fromServer = new PipedInputStream(out, 1 << 16);
        this.end =
                CompletableFuture.supplyAsync(() -> Session.hold(in, out, editors -> editors.orElse(Locale.ENGLISH)));
        Launcher<LanguageServer> launcher = LSPLauncher.createClientLauncher(this, fromServer, toServer);
        var unused = launcher.startListening();
        this.server = launcher.getRemoteProxy();
    }

    /** One that has greeted the server. */
    static Editor greeted(ClientCapabilities can) throws IOException {
        return greeted(can, "en");
    }

    /** One that has greeted the server, and said what it speaks itself. */
    static Editor greeted(ClientCapabilities can, String locale) throws IOException {
        Editor editor = new Editor();
        InitializeParams greeting = new InitializeParams();
        greeting.setLocale(locale);
        greeting.setCapabilities(can);
        editor.answer(editor.server.initialize(greeting));
        return editor;
    }

    LanguageServer server() {
        return server;
    }

    PipedOutputStream wire() {
        return toServer;
    }

    <T> T answer(CompletableFuture<T> asked) {
        try {
            return asked.get(PATIENCE, TimeUnit.SECONDS);
        } catch (InterruptedException | ExecutionException | TimeoutException problem) {
            throw new AssertionError(problem);
        }
    }

    /** Opens a file with a text that is not saved in it. */
    Editor open(Path file, String unsaved) {
        uri = file.toUri().toString();
        text = unsaved;
        version = 1;
        server.getTextDocumentService()
                .didOpen(new DidOpenTextDocumentParams(new TextDocumentItem(uri, "yaml", version, unsaved)));
        return this;
    }

    Editor open(Path file) throws IOException {
        return open(file, Files.readString(file));
    }

    /** Types something in place of words that stand in the text once. */
    Editor type(String old, String now) {
        int at = text.indexOf(old);
        assertTrue(at >= 0 && text.indexOf(old, at + 1) < 0, old);
        Range range = new Range(position(at), position(at + old.length()));
        text = text.substring(0, at) + now + text.substring(at + old.length());
        change(new TextDocumentContentChangeEvent(range, now));
        return this;
    }

    /** Puts another text in place of all. */
    Editor replaceAll(String now) {
        text = now;
        change(new TextDocumentContentChangeEvent(now));
        return this;
    }

    private void change(TextDocumentContentChangeEvent event) {
        server.getTextDocumentService()
                .didChange(new DidChangeTextDocumentParams(
                        new VersionedTextDocumentIdentifier(uri, ++version), List.of(event)));
    }

    /** UTF-16 units from the beginning of a line that ends with a line feed (LSP 3.17, Position). */
    Position position(int offset) {
        int line = (int)
                text.substring(0, offset).chars().filter(unit -> unit == '\n').count();
        return new Position(line, offset - (text.lastIndexOf('\n', offset - 1) + 1));
    }

    /** Behind words that stand in the text. */
    Position behind(String words) {
        assertTrue(text.contains(words), words);
        return position(text.indexOf(words) + words.length());
    }

    Range range(String words) {
        assertTrue(text.contains(words), words);
        return new Range(position(text.indexOf(words)), behind(words));
    }

    String text() {
        return text;
    }

    TextDocumentIdentifier document() {
        return new TextDocumentIdentifier(uri);
    }

    /** What is shown in the text that is open, once it is about the text as it stands. */
    List<Diagnostic> findings() {
        return findings(shown -> true);
    }

    /** What is shown, once it is as it should be. */
    List<Diagnostic> findings(Function<List<Diagnostic>, Boolean> wanted) {
        try {
            while (true) {
                PublishDiagnosticsParams next = published.poll(PATIENCE, TimeUnit.SECONDS);
                if (next == null) {
                    throw new AssertionError("nothing is shown");
                }
                if (next.getUri().equals(uri)
                        && next.getVersion() != null
                        && next.getVersion() == version
                        && wanted.apply(next.getDiagnostics())) {
                    return next.getDiagnostics();
                }
            }
        } catch (InterruptedException ended) {
            throw new AssertionError(ended);
        }
    }

    String hover(String words) {
        var hover = answer(server.getTextDocumentService().hover(new HoverParams(document(), behind(words))));
        return hover == null ? "" : hover.getContents().getRight().getValue();
    }

    List<CompletionItem> offers(String behind) {
        return answer(server.getTextDocumentService().completion(new CompletionParams(document(), behind(behind))))
                .getLeft();
    }

    List<CodeAction> actions(String words) {
        CodeActionParams asked = new CodeActionParams(document(), range(words), new CodeActionContext(List.of()));
        return answer(server.getTextDocumentService().codeAction(asked)).stream()
                .map(Either::getRight)
                .toList();
    }

    /** The text with edits made, as an editor makes them: from the last to the first. */
    String applied(List<? extends TextEdit> edits) {
        return applied(text, edits);
    }

    static String applied(String text, List<? extends TextEdit> edits) {
        StringBuilder made = new StringBuilder(text);
        for (int at = edits.size() - 1; at >= 0; at--) {
            Range range = edits.get(at).getRange();
            made.replace(
                    offset(text, range.getStart()),
                    offset(text, range.getEnd()),
                    edits.get(at).getNewText());
        }
        return made.toString();
    }

    private static int offset(String text, Position position) {
        int start = 0;
        for (int line = 0; line < position.getLine(); line++) {
            start = text.indexOf('\n', start) + 1;
        }
        return start + position.getCharacter();
    }

    /** Does to the files of a folder what an editor is told to do. */
    static void apply(WorkspaceEdit edit) {
        for (var change : edit.getDocumentChanges()) {
            try {
                if (change.isLeft()) {
                    Path file = Path.of(java.net.URI.create(
                            change.getLeft().getTextDocument().getUri()));
                    List<TextEdit> edits = change.getLeft().getEdits().stream()
                            .map(Either::getLeft)
                            .toList();
                    Files.writeString(file, applied(Files.readString(file), edits));
                } else {
                    var rename = (org.eclipse.lsp4j.RenameFile) change.getRight();
                    Files.move(
                            Path.of(java.net.URI.create(rename.getOldUri())),
                            Path.of(java.net.URI.create(rename.getNewUri())));
                }
            } catch (IOException problem) {
                throw new UncheckedIOException(problem);
            }
        }
    }

    /** Whether the server was content with how it ended. */
    boolean leave() {
        answer(server.shutdown());
        server.exit();
        return answer(end);
    }

    /** The same after the pipe was closed without a word. */
    boolean hangUp() throws IOException {
        toServer.close();
        return answer(end);
    }

    List<String> told() {
        return told;
    }

    @Override
    public void publishDiagnostics(PublishDiagnosticsParams shown) {
        published.add(shown);
    }

    @Override
    public void showMessage(MessageParams message) {
        told.add(message.getMessage());
    }

    @Override
    public void telemetryEvent(Object object) {}

    @Override
    public CompletableFuture<MessageActionItem> showMessageRequest(ShowMessageRequestParams asked) {
        return CompletableFuture.completedFuture(null);
    }

    @Override
    public void logMessage(MessageParams message) {}

    @Override
    public void close() throws IOException {
        toServer.close();
    }
}
