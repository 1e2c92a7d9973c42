package org.drillwright.print.command.editor.protocol;

import org.eclipse.lsp4j.DidChangeConfigurationParams;
import org.eclipse.lsp4j.DidChangeWatchedFilesParams;
import org.eclipse.lsp4j.services.WorkspaceService;

/** What an editor tells of its folders: nothing that the schools themselves don't say; they are watched already. */
final class DrillFolders implements WorkspaceService {

    @Override
    public void didChangeConfiguration(DidChangeConfigurationParams changed) {}

    @Override
    public void didChangeWatchedFiles(DidChangeWatchedFilesParams changed) {}
}
