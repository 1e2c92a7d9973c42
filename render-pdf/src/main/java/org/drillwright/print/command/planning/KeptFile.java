package org.drillwright.print.command.planning;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.drillwright.print.command.console.CannotRun;
import org.drillwright.print.command.write.WholeFile;
import org.drillwright.read.ReadingLimits;
import org.drillwright.wording.Message;

/** Writes the file of a plan that is kept: once, and never again. */
final class KeptFile {

    private KeptFile() {}

    /**
     * Leaves a file of that name as it is: its name is that of what it says.
     *
     * @param wayOut if it is larger than what is read
     */
    static void write(Path file, String text, Message wayOut) {
        if (text.getBytes(StandardCharsets.UTF_8).length > ReadingLimits.FILE_BYTES) {
            throw new CannotRun(Message.of(KeptFile.class, "too.large", ReadingLimits.FILE_BYTES / 1024)
                    .then(wayOut));
        }
        if (Files.notExists(file)) {
            new WholeFile(file).create(text);
        }
    }
}
