package org.drillwright.print.command.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Arrays;
import org.drillwright.print.command.console.CannotRun;

/**
 * A file to which lines are added and nothing else: what it held stays byte for byte, and it holds the new lines whole
 * or not at all.
 */
public final class RecordFile {

    private final Path file;
    private final byte[] before;

    private RecordFile(Path file, byte[] before) {
        this.file = file;
        this.before = before;
    }

    /** As it is now; empty if it isn't there yet. */
    public static RecordFile open(Path file) {
        try {
            return new RecordFile(file, Files.exists(file) ? Files.readAllBytes(file) : new byte[0]);
        } catch (IOException problem) {
            throw new CannotRun("'" + file + "' cannot be read", problem);
        }
    }

    /** All it holds. */
    public String text() {
        return new String(before, StandardCharsets.UTF_8);
    }

    /** Adds lines. Refuses if somebody else has changed the file since it was opened. */
    public void append(String lines) {
        Path beside = file.resolveSibling(
                file.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            ByteArrayOutputStream all = new ByteArrayOutputStream();
            all.writeBytes(before);
            all.writeBytes(lines.getBytes(StandardCharsets.UTF_8));
            Files.write(beside, all.toByteArray());
            if (!Arrays.equals(before, open(file).before)) {
                throw new CannotRun("'" + file + "' was changed by another program just now. Nothing was recorded; run"
                        + " this again.");
            }
            replace(beside);
        } catch (IOException problem) {
            throw new CannotRun(
                    "Nothing was recorded: '" + file + "' cannot be written; is it open in another program?", problem);
        } finally {
            discard(beside);
        }
    }

    private void replace(Path beside) throws IOException {
        try {
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException unsupported) {
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void discard(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException stays) {
            // It holds nothing that isn't elsewhere, and the next run of this number writes over it.
        }
    }
}
