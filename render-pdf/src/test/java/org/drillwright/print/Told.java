package org.drillwright.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.drillwright.phrase.Replay;
import org.drillwright.school.SchoolFolder;

/** A drill of one count, told in a test and played. */
public final class Told {

    private static final String FILE = """
            title: Told in a test
            level: training
            form: partner
            weapon: %s
            start: %s
            opening: Salute. Masks on.
            steps:
              - leader: %s
                follower: %s
            closing: Salute.
            """;

    private Told() {}

    public static Replay count(String weapon, String start, String leader, String follower) {
        try {
            Path folder = Files.createTempDirectory("told");
            Path file = folder.resolve("told.yaml");
            Files.write(file, FILE.formatted(weapon, start, leader, follower).getBytes(StandardCharsets.UTF_8));
            Replay replay = SchoolFolder.open(folder)
                    .entries()
                    .get(0)
                    .subject()
                    .orElseThrow()
                    .replay();
            Files.delete(file);
            Files.delete(folder);
            return replay;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
