package org.drillwright.print.command.editor.workspace;

import java.nio.file.Path;
import org.drillwright.school.DrillFiles;
import org.drillwright.source.SourceFile;

/**
 * A text as it stands in an editor.
 *
 * @param uri as the editor names it
 * @param file where it is saved, whole
 * @param version as the editor counts
 */
public record Document(String uri, Path file, int version, SourceFile text) {

    Document(String uri, Path file, int version, String text) {
        this(uri, file, version, new SourceFile(DrillFiles.name(file), text));
    }

    /** The same text, written otherwise. */
    public Document saying(int newVersion, String newText) {
        return new Document(uri, file, newVersion, newText);
    }
}
