package org.drillwright.print.command.write;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.register.RecordReader;
import org.drillwright.wording.Message;

/** Reads a file that this program keeps, such as its records: never a pipe that has no end, never more than a bound. */
public final class HeldFile {

    private HeldFile() {}

    /** All the file holds, at most {@link RecordReader#MOST_BYTES}; nothing if it isn't there. */
    public static byte[] read(Path file) {
        if (Files.notExists(file, LinkOption.NOFOLLOW_LINKS)) {
            return new byte[0];
        }
        if (!Files.isRegularFile(file)) {
            throw new CannotRun(Message.of(HeldFile.class, "held-file.is.not.a.file", file));
        }
        try (var in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(RecordReader.MOST_BYTES + 1);
            if (bytes.length > RecordReader.MOST_BYTES) {
                throw new CannotRun(Message.of(
                        HeldFile.class, "held-file.is.larger.than.mib", file, RecordReader.MOST_BYTES / (1024 * 1024)));
            }
            return bytes;
        } catch (IOException problem) {
            throw new CannotRun(Message.of(HeldFile.class, "held-file.cannot.be.read", file), problem);
        }
    }
}
