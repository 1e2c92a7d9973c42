package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.PosixFileAttributeView;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.folder.Locations;

/** Puts a text in a file's place: written beside it first, then moved, so that the old text stays whole until then. */
public final class TextFile {

    private TextFile() {}

    /** Writes all of it or nothing; a file that is there keeps its permissions, and a link leads on to its file. */
    public static void write(Path file, String text) {
        try {
            Path target = Files.isSymbolicLink(file) ? file.toRealPath() : file;
            Path folder = Locations.folderOf(target.toAbsolutePath());
            Path beside = Files.createTempFile(folder, String.valueOf(target.getFileName()), ".part");
            try {
                Files.writeString(beside, text, StandardCharsets.UTF_8);
                copyPermissions(target, beside);
                move(beside, target);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException problem) {
            throw new CannotRun("'" + file + "' cannot be written and was left as it is", problem);
        }
    }

    private static void copyPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (view != null) {
            view.setPermissions(
                    Files.exists(from)
                            ? Files.getPosixFilePermissions(from)
                            : java.nio.file.attribute.PosixFilePermissions.fromString("rw-r--r--"));
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException unsupported) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
