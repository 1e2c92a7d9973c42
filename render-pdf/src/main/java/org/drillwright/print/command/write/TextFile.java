package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.Arrays;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.wording.Message;

/** Puts a text in a file's place: written beside it first, then moved, so that the old text stays whole until then. */
public final class TextFile {

    private static final String MARK = "\ufeff";

    private TextFile() {}

    /** What is said when a file was written. */
    public static Message written(Object file) {
        return Message.of(TextFile.class, "text-file.written", file);
    }

    /** Writes all of it or nothing; a file that is there keeps its permissions, and a link leads on to its file. */
    public static void write(Path file, String text) {
        Part.mustTakeAFile(file);
        try {
            Path target = Part.followed(file);
            place(target, text, () -> {});
        } catch (IOException problem) {
            throw new CannotRun(Message.of(TextFile.class, "text-file.cannot.be.written.and", file), problem);
        }
    }

    /**
     * As {@link #write}; refuses if the file no longer holds what it did when it was read.
     *
     * @param before all it held
     */
    public static void replace(Path file, byte[] before, String text) {
        Part.mustTakeAFile(file);
        try {
            Path target = Part.followed(file);
            place(target, text, () -> {
                if (!Arrays.equals(before, Files.readAllBytes(target))) {
                    throw changed(file);
                }
            });
        } catch (IOException problem) {
            throw new CannotRun(Message.of(TextFile.class, "text-file.cannot.be.written.and", file), problem);
        }
    }

    /**
     * As {@link #replace}, of a file whose text was read before; the invisible mark at the beginning of some files is no
     * part of that text, and stays.
     */
    public static void rewrite(Path file, String read, String text) {
        try {
            byte[] before = Files.readAllBytes(file);
            String mark = new String(before, StandardCharsets.UTF_8).startsWith(MARK) ? MARK : "";
            if (!Arrays.equals(before, (mark + read).getBytes(StandardCharsets.UTF_8))) {
                throw changed(file);
            }
            replace(file, before, mark + text);
        } catch (IOException problem) {
            throw new CannotRun(Message.of(TextFile.class, "text-file.cannot.be.read", file), problem);
        }
    }

    private static CannotRun changed(Path file) {
        return new CannotRun(Message.of(TextFile.class, "text-file.was.changed.by.another", file));
    }

    /** Writes a new file, all of it or nothing; one that is there is left alone. */
    public static void create(Path file, String text) {
        try {
            Path part = Part.write(file, text.getBytes(StandardCharsets.UTF_8), 1);
            try {
                Files.move(part, file);
            } finally {
                Part.discard(part);
            }
        } catch (FileAlreadyExistsException there) {
            throw new CannotRun(Message.of(TextFile.class, "text-file.already.exists.it.was", file));
        } catch (IOException problem) {
            throw new CannotRun(Message.of(TextFile.class, "text-file.cannot.be.written", file), problem);
        }
    }

    /** Looked at last of all before the old file goes. */
    @FunctionalInterface
    private interface LastLook {
        void look() throws IOException;
    }

    private static void place(Path target, String text, LastLook last) throws IOException {
        Path part = Part.write(target, text.getBytes(StandardCharsets.UTF_8), 1);
        try {
            copyPermissions(target, part);
            last.look();
            Part.replace(part, target);
        } finally {
            Part.discard(part);
        }
    }

    private static void copyPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
        if (view != null && Files.exists(from)) {
            view.setPermissions(Files.getPosixFilePermissions(from));
        }
    }
}
