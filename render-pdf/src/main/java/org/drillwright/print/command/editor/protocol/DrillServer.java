package org.drillwright.print.command.editor.protocol;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import org.drillwright.print.command.console.VersionText;
import org.eclipse.lsp4j.CodeActionKind;
import org.eclipse.lsp4j.CodeActionOptions;
import org.eclipse.lsp4j.CompletionOptions;
import org.eclipse.lsp4j.FileOperationFilter;
import org.eclipse.lsp4j.FileOperationOptions;
import org.eclipse.lsp4j.FileOperationPattern;
import org.eclipse.lsp4j.FileOperationPatternKind;
import org.eclipse.lsp4j.FileOperationsServerCapabilities;
import org.eclipse.lsp4j.InitializeParams;
import org.eclipse.lsp4j.InitializeResult;
import org.eclipse.lsp4j.PositionEncodingKind;
import org.eclipse.lsp4j.RenameOptions;
import org.eclipse.lsp4j.ServerCapabilities;
import org.eclipse.lsp4j.ServerInfo;
import org.eclipse.lsp4j.SetTraceParams;
import org.eclipse.lsp4j.TextDocumentSyncKind;
import org.eclipse.lsp4j.TextDocumentSyncOptions;
import org.eclipse.lsp4j.WorkspaceServerCapabilities;
import org.eclipse.lsp4j.services.LanguageServer;
import org.eclipse.lsp4j.services.TextDocumentService;
import org.eclipse.lsp4j.services.WorkspaceService;

/** The server as the protocol sees it: what it can do, and how a talk begins and ends. */
final class DrillServer implements LanguageServer {

    private final Conversation conversation;
    private final DrillDocuments documents;
    private final DrillFolders folders;
    private final Function<Optional<Locale>, Locale> language;

    /** @param language what is spoken, by what the editor itself speaks, if it says so */
    DrillServer(Conversation conversation, Function<Optional<Locale>, Locale> language) {
        this.language = language;
        this.conversation = conversation;
        this.documents = new DrillDocuments(conversation, conversation.workspace());
        this.folders = new DrillFolders(conversation, conversation.workspace());
    }

    @Override
    public CompletableFuture<InitializeResult> initialize(InitializeParams asked) {
        Optional<Locale> editors = Optional.ofNullable(asked.getLocale()).map(Locale::forLanguageTag);
        conversation.begin(Manner.of(Optional.ofNullable(asked.getCapabilities()), language.apply(editors)));
        return CompletableFuture.completedFuture(
                new InitializeResult(capabilities(), new ServerInfo("drillwright", VersionText.number())));
    }

    private static ServerCapabilities capabilities() {
        TextDocumentSyncOptions sync = new TextDocumentSyncOptions();
        sync.setOpenClose(true);
        sync.setChange(TextDocumentSyncKind.Incremental);
        sync.setSave(true);
        ServerCapabilities can = new ServerCapabilities();
        can.setPositionEncoding(PositionEncodingKind.UTF16);
        can.setTextDocumentSync(sync);
        can.setHoverProvider(true);
        can.setCompletionProvider(new CompletionOptions(false, List.of(":", " ", "-", "[")));
        can.setCodeActionProvider(new CodeActionOptions(List.of(CodeActionKind.QuickFix, CodeActionKind.SourceFixAll)));
        can.setDocumentSymbolProvider(true);
        can.setFoldingRangeProvider(true);
        can.setDocumentFormattingProvider(true);
        can.setDefinitionProvider(true);
        can.setReferencesProvider(true);
        can.setRenameProvider(new RenameOptions(true));
        can.setWorkspace(onRenames());
        return can;
    }

    /** Told before the editor renames a file by itself. */
    private static WorkspaceServerCapabilities onRenames() {
        FileOperationPattern files = new FileOperationPattern("**/*.{yaml,yml}");
        files.setMatches(FileOperationPatternKind.File);
        FileOperationsServerCapabilities operations = new FileOperationsServerCapabilities();
        operations.setWillRename(new FileOperationOptions(List.of(new FileOperationFilter(files, "file"))));
        WorkspaceServerCapabilities workspace = new WorkspaceServerCapabilities();
        workspace.setFileOperations(operations);
        return workspace;
    }

    @Override
    public CompletableFuture<Object> shutdown() {
        conversation.shut();
        return CompletableFuture.completedFuture(null);
    }

    @Override
    public void exit() {
        conversation.end();
    }

    /** Nothing is traced. */
    @Override
    public void setTrace(SetTraceParams wanted) {}

    @Override
    public TextDocumentService getTextDocumentService() {
        return documents;
    }

    @Override
    public WorkspaceService getWorkspaceService() {
        return folders;
    }
}
