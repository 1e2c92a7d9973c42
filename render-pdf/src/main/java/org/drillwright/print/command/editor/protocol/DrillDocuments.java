package org.drillwright.print.command.editor.protocol;

import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.drillwright.editing.Told;
import org.drillwright.print.command.editor.workspace.Document;
import org.drillwright.print.command.editor.workspace.Workspace;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextDocumentPositionParams;
import org.eclipse.lsp4j.services.TextDocumentService;

/** What an editor tells and asks of the texts that are open in it. */
final class DrillDocuments implements TextDocumentService {

    /** Who pauses for so many milliseconds wants to see what is found. */
    private static final long PAUSE = 100;

    private final Conversation conversation;
    private final Workspace workspace;

    DrillDocuments(Conversation conversation, Workspace workspace) {
        this.conversation = conversation;
        this.workspace = workspace;
    }

    @Override
    public void didOpen(DidOpenTextDocumentParams opened) {
        TextDocumentItem item = opened.getTextDocument();
        file(item.getUri())
                .ifPresent(file -> conversation.hear(() -> {
                    workspace.open(item.getUri(), file, item.getVersion(), item.getText());
                    conversation.publish();
                }));
    }

    /** The file that a text is saved in; none of a text that lies elsewhere. */
    private static Optional<Path> file(String uri) {
        try {
            return Optional.of(Path.of(URI.create(uri)));
        } catch (IllegalArgumentException | FileSystemNotFoundException elsewhere) {
            return Optional.empty();
        }
    }

    @Override
    public void didChange(DidChangeTextDocumentParams changed) {
        conversation.hear(() -> {
            workspace.opened(changed.getTextDocument().getUri()).ifPresent(opened -> {
                Document now = opened.document();
                for (TextDocumentContentChangeEvent change : changed.getContentChanges()) {
                    now = now.saying(changed.getTextDocument().getVersion(), text(now, change));
                }
                workspace.change(now);
            });
            conversation.publishAfter(PAUSE);
        });
    }

    private static String text(Document document, TextDocumentContentChangeEvent change) {
        if (change.getRange() == null) {
            return change.getText();
        }
        var span = new Positions(document.text()).span(change.getRange());
        String text = document.text().text();
        return text.substring(0, span.start()) + change.getText() + text.substring(span.end());
    }

    @Override
    public void didClose(DidCloseTextDocumentParams closed) {
        conversation.hear(() -> {
            workspace.close(closed.getTextDocument().getUri());
            conversation.clear(closed.getTextDocument().getUri());
        });
    }

    @Override
    public void didSave(DidSaveTextDocumentParams saved) {
        conversation.hear(() -> {
            workspace.noticeSave();
            conversation.publish();
        });
    }

    @Override
    public CompletableFuture<Hover> hover(HoverParams asked) {
        return at(asked, (page, offset) -> {
            List<Told> told = page.hover(offset);
            return told.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Hover(
                            conversation.manner().content(told),
                            page.positions().range(told.get(0).span())));
        });
    }

    /** An answer about a text that is open; nothing of any other. */
    private <T> CompletableFuture<T> of(TextDocumentIdentifier asked, Function<Page, Optional<T>> answer) {
        return conversation.ask(() -> workspace
                .opened(asked.getUri())
                .map(opened -> new Page(opened.school(), opened.document()))
                .flatMap(answer));
    }

    private <T> CompletableFuture<T> at(
            TextDocumentPositionParams asked, BiFunction<Page, Integer, Optional<T>> answer) {
        return of(
                asked.getTextDocument(),
                page -> answer.apply(page, page.positions().offset(asked.getPosition())));
    }
}
