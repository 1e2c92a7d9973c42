package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.record.RecordReader;

/** Reads a file that this program keeps, such as its records: never a pipe that has no end, never more than a bound. */
public final class HeldFile {

    private HeldFile() {}

    /** All the file holds, at most {@link RecordReader#MOST_BYTES}; nothing if it isn't there. */
    public static byte[] read(Path file) {
        if (Files.notExists(file, LinkOption.NOFOLLOW_LINKS)) {
            return new byte[0];
        }
        if (!Files.isRegularFile(file)) {
            throw new CannotRun("'" + file + "' is not a file that can be read; it was left alone.");
        }
        try (var in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(RecordReader.MOST_BYTES + 1);
            if (bytes.length > RecordReader.MOST_BYTES) {
                throw new CannotRun("'" + file + "' is larger than " + RecordReader.MOST_BYTES / (1024 * 1024)
                        + " MiB; it was left alone. Rename it, and a new one is begun.");
            }
            return bytes;
        } catch (IOException problem) {
            throw new CannotRun("'" + file + "' cannot be read", problem);
        }
    }
}
