package org.drillwright.print.command.editor.protocol;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.drillwright.print.command.editor.workspace.Workspace;
import org.drillwright.school.DrillFiles;
import org.drillwright.school.FileKind;
import org.drillwright.school.SchoolFolder;
import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.FileRename;
import org.eclipse.lsp4j.RenameFilesParams;
import org.eclipse.lsp4j.TextEdit;
import org.eclipse.lsp4j.WorkspaceEdit;
import org.eclipse.lsp4j.services.WorkspaceService;

/** What an editor tells of its folders: hardly anything that the schools don't say themselves; they are watched already. */
final class DrillFolders implements WorkspaceService {

    private final Conversation conversation;
    private final Workspace workspace;

    DrillFolders(Conversation conversation, Workspace workspace) {
        this.conversation = conversation;
        this.workspace = workspace;
    }

    /** A drill's file that gets another name takes that name along into all files that name the drill. */
    @Override
    public CompletableFuture<WorkspaceEdit> willRenameFiles(RenameFilesParams asked) {
        return conversation.ask(() -> {
            Map<String, List<TextEdit>> edits = new LinkedHashMap<>();
            asked.getFiles()
                    .forEach(file -> edits(file).forEach((uri, own) -> edits.merge(uri, own, DrillFolders::joined)));
            return edits.isEmpty() ? Optional.empty() : Optional.of(new WorkspaceEdit(edits));
        });
    }

    private static List<TextEdit> joined(List<TextEdit> some, List<TextEdit> more) {
        List<TextEdit> all = new ArrayList<>(some);
        all.addAll(more);
        return all;
    }

    private Map<String, List<TextEdit>> edits(FileRename file) {
        try {
            Optional<Path> old = DrillDocuments.file(file.getOldUri());
            Optional<String> now = DrillDocuments.file(file.getNewUri()).map(DrillFiles::id);
            Optional<SchoolFolder> school = old.isEmpty() ? Optional.empty() : workspace.school(old.get());
            boolean drill = school.flatMap(folder -> FileKind.of(folder.root(), old.get()))
                    .filter(kind -> kind == FileKind.DRILL)
                    .isPresent();
            if (!drill || now.isEmpty()) {
                return Map.of();
            }
            String before = DrillFiles.id(old.get());
            return before.equals(now.get())
                    ? Map.of()
                    : new Renaming(workspace, conversation.manner()).edits(school.get(), before, now.get());
        } catch (IOException unreadable) {
            return Map.of();
        }
    }

    @Override
    public void didChangeConfiguration(DidChangeConfigurationParams changed) {}

    @Override
    public void didChangeWatchedFiles(DidChangeWatchedFilesParams changed) {}
}
