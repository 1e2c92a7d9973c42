package org.drillwright.print.command.editor.workspace;

import java.nio.file.Path;
import org.drillwright.read.ReadingLimits;
import org.drillwright.school.DrillFiles;
import org.drillwright.source.SourceFile;

/**
 * A text as it stands in an editor.
 *
 * @param uri as the editor names it
 * @param file where it is saved, whole
 * @param version as the editor counts
 * @param text empty if it is too long to be held
 * @param beyond whether it is too long to be held
 */
public record Document(String uri, Path file, int version, SourceFile text, boolean beyond) {

    /** Characters of a text that is held: more than any file that is read may have, as it can be cut down to one. */
    public static final int MOST = 8 * ReadingLimits.FILE_BYTES;

    static Document of(String uri, Path file, int version, String text) {
        boolean beyond = text.length() > MOST;
        return new Document(uri, file, version, new SourceFile(DrillFiles.name(file), beyond ? "" : text), beyond);
    }

    /** The same text, written otherwise. */
    public Document saying(int newVersion, String newText) {
        return of(uri, file, newVersion, newText);
    }
}
