package org.drillwright.print.command.editor.protocol;

import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import org.drillwright.editing.DrillRename;
import org.drillwright.editing.HoverText;
import org.drillwright.formatter.Formatter;
import org.drillwright.print.command.editor.workspace.Document;
import org.drillwright.print.command.editor.workspace.Workspace;
import org.drillwright.wording.Message;
import org.eclipse.lsp4j.CodeAction;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionParams;
import org.eclipse.lsp4j.Command;
import org.eclipse.lsp4j.CompletionItem;
import org.eclipse.lsp4j.CompletionList;
import org.eclipse.lsp4j.CompletionParams;
import org.eclipse.lsp4j.DefinitionParams;
import org.eclipse.lsp4j.DidChangeTextDocumentParams;
import org.eclipse.lsp4j.DidCloseTextDocumentParams;
import org.eclipse.lsp4j.DidOpenTextDocumentParams;
import org.eclipse.lsp4j.DidSaveTextDocumentParams;
import org.eclipse.lsp4j.DocumentFormattingParams;
import org.eclipse.lsp4j.DocumentSymbol;
import org.eclipse.lsp4j.DocumentSymbolParams;
import org.eclipse.lsp4j.FoldingRange;
import org.eclipse.lsp4j.FoldingRangeRequestParams;
import org.eclipse.lsp4j.Hover;
import org.eclipse.lsp4j.HoverParams;
import org.eclipse.lsp4j.Location;
import org.eclipse.lsp4j.LocationLink;
import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.PrepareRenameDefaultBehavior;
import org.eclipse.lsp4j.PrepareRenameParams;
import org.eclipse.lsp4j.PrepareRenameResult;
import org.eclipse.lsp4j.Range;
import org.eclipse.lsp4j.ReferenceParams;
import org.eclipse.lsp4j.RenameParams;
import org.eclipse.lsp4j.SymbolInformation;
import org.eclipse.lsp4j.TextDocumentContentChangeEvent;
import org.eclipse.lsp4j.TextDocumentIdentifier;
import org.eclipse.lsp4j.TextDocumentItem;
import org.eclipse.lsp4j.TextDocumentPositionParams;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.jsonrpc.messages.Either;
import org.eclipse.lsp4j.jsonrpc.messages.Either3;
import org.eclipse.lsp4j.services.TextDocumentService;

/** What an editor tells and asks of the texts that are open in it. */
final class DrillDocuments implements TextDocumentService {

    /** Who pauses for so many milliseconds wants to see what is found. */
    private static final long PAUSE = 100;

    private static final Range TOP = new Range(new Position(0, 0), new Position(0, 0));

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
    static Optional<Path> file(String uri) {
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
                    if (!now.beyond() || change.getRange() == null) {
                        now = now.saying(changed.getTextDocument().getVersion(), text(now, change));
                    }
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
            conversation.publish();
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
            List<HoverText> told = page.hover(offset);
            return told.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Hover(
                            conversation.manner().content(told),
                            page.positions().range(told.get(0).span())));
        });
    }

    @Override
    public CompletableFuture<Either<List<CompletionItem>, CompletionList>> completion(CompletionParams asked) {
        return at(
                asked,
                (page, offset) -> Optional.of(Either.forLeft(answers(page).items(page.offers(offset)))));
    }

    @Override
    public CompletableFuture<List<Either<Command, CodeAction>>> codeAction(CodeActionParams asked) {
        Predicate<String> wanted = kind -> asked.getContext().getOnly() == null
                || asked.getContext().getOnly().stream()
                        .anyMatch(only -> kind.equals(only) || kind.startsWith(only + "."));
        return of(asked.getTextDocument(), page -> {
            ProtocolJson answers = answers(page);
            List<Either<Command, CodeAction>> actions = new ArrayList<>();
            if (wanted.test(CodeActionKind.QuickFix)) {
                page.fixes(page.positions().span(asked.getRange())).forEach(fix -> {
                    CodeAction action = answers.action(fix);
                    action.setEdit(here(asked.getTextDocument(), List.of(answers.edit(fix.edit()))));
                    actions.add(Either.forRight(action));
                });
            }
            if (wanted.test(CodeActionKind.SourceFixAll)) {
                page.mended().ifPresent(text -> {
                    CodeAction action = new CodeAction(Message.of(DrillDocuments.class, "correct.all")
                            .in(conversation.manner().language()));
                    action.setKind(CodeActionKind.SourceFixAll);
                    action.setEdit(here(asked.getTextDocument(), answers.rewritten(text)));
                    actions.add(Either.forRight(action));
                });
            }
            return Optional.of(actions);
        });
    }

    private static WorkspaceEdit here(TextDocumentIdentifier text, List<TextEdit> edits) {
        return new WorkspaceEdit(Map.of(text.getUri(), edits));
    }

    @Override
    public CompletableFuture<List<Either<SymbolInformation, DocumentSymbol>>> documentSymbol(
            DocumentSymbolParams asked) {
        return of(
                asked.getTextDocument(),
                page -> Optional.of(answers(page).symbols(page.outline()).stream()
                        .map(Either::<SymbolInformation, DocumentSymbol>forRight)
                        .toList()));
    }

    @Override
    public CompletableFuture<List<FoldingRange>> foldingRange(FoldingRangeRequestParams asked) {
        return of(asked.getTextDocument(), page -> Optional.of(answers(page).folds(page.outline())));
    }

    @Override
    public CompletableFuture<List<? extends TextEdit>> formatting(DocumentFormattingParams asked) {
        return of(
                asked.getTextDocument(),
                page -> page.tidied().map(outcome -> {
                    if (outcome instanceof Formatter.Tidied tidied) {
                        return answers(page).rewritten(tidied.text());
                    }
                    if (outcome instanceof Formatter.LeftAlone left) {
                        conversation.tell(left.why());
                    }
                    return List.of();
                }));
    }

    @Override
    public CompletableFuture<Either<List<? extends Location>, List<? extends LocationLink>>> definition(
            DefinitionParams asked) {
        return at(
                asked,
                (page, offset) -> page.named(offset)
                        .flatMap(named -> page.file(named.id()))
                        .map(file -> new Location(file.toUri().toString(), TOP))
                        .or(() -> page.person(offset).flatMap(page::place).map(DrillDocuments::location))
                        .map(location -> Either.forLeft(List.of(location))));
    }

    private static Location location(DrillRename.Mention mention) {
        return new Location(
                mention.file().file().toUri().toString(),
                new Positions(mention.file().text()).range(mention.span()));
    }

    @Override
    public CompletableFuture<List<? extends Location>> references(ReferenceParams asked) {
        return at(
                asked,
                (page, offset) -> page.renamed(offset)
                        .map(named -> page.mentions(named.id()))
                        .or(() -> page.person(offset).map(page::mentionsOf))
                        .map(mentions ->
                                mentions.stream().map(DrillDocuments::location).toList()));
    }

    @Override
    public CompletableFuture<Either3<Range, PrepareRenameResult, PrepareRenameDefaultBehavior>> prepareRename(
            PrepareRenameParams asked) {
        return at(
                asked,
                (page, offset) -> page.renamed(offset)
                        .or(() -> page.person(offset))
                        .map(named -> Either3.forSecond(
                                new PrepareRenameResult(page.positions().range(named.span()), named.id()))));
    }

    @Override
    public CompletableFuture<WorkspaceEdit> rename(RenameParams asked) {
        Renaming renaming = new Renaming(workspace, conversation.manner());
        return at(
                asked,
                (page, offset) -> page.renamed(offset)
                        .map(named -> {
                            WorkspaceEdit edit = renaming.edit(page, named.id(), asked.getNewName());
                            renaming.left(page, named.id(), asked.getNewName()).forEach(conversation::tell);
                            return edit;
                        })
                        .or(() -> page.person(offset).map(named -> {
                            WorkspaceEdit edit =
                                    renaming.person(page.school().folder(), named.id(), asked.getNewName());
                            renaming.leftOf(page, named.id()).forEach(conversation::tell);
                            return edit;
                        })));
    }

    private ProtocolJson answers(OpenText page) {
        return new ProtocolJson(page.positions(), conversation.manner().language());
    }

    /** An answer about a text that is open; nothing of any other. */
    private <T> CompletableFuture<T> of(TextDocumentIdentifier asked, Function<OpenText, Optional<T>> answer) {
        return conversation.ask(() -> workspace
                .opened(asked.getUri())
                .map(opened -> new OpenText(opened.school(), opened.document()))
                .flatMap(answer));
    }

    private <T> CompletableFuture<T> at(
            TextDocumentPositionParams asked, BiFunction<OpenText, Integer, Optional<T>> answer) {
        return of(
                asked.getTextDocument(),
                page -> answer.apply(page, page.positions().offset(asked.getPosition())));
    }
}
