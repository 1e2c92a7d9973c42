package org.drillwright.print.hostile;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import org.drillwright.print.command.PlanFiles;
import org.drillwright.print.command.Trial;

/** An invented school with people and a class, one file of which is then exchanged for one that means no good. */
record School(Path root) {

    /** A ceiling against explosions, not a figure: all of these take well under a few seconds. */
    private static final Duration CEILING = Duration.ofSeconds(60);

    static School in(Path root) {
        PlanFiles.of(root, 1, 1);
        return new School(root);
    }

    School with(String name, String text) {
        return with(name, text.getBytes(StandardCharsets.UTF_8));
    }

    School with(String name, byte[] bytes) {
        try {
            Path file = root.resolve(name);
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
            return this;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** Runs a command in it: it ends, it knows the fault as none of its own, and nothing raw reaches a terminal. */
    Trial run(String... arguments) {
        Trial trial = assertTimeoutPreemptively(CEILING, () -> Trial.run(root, arguments));
        assertFalse(trial.err().contains("A fault in Drillwright itself"), trial.err());
        assertFalse(trial.err().contains("\tat "), trial.err());
        return trial;
    }

    /** What a command says that reads the file of that name. */
    String saidOf(String name) {
        boolean planning = name.startsWith("roster") || name.startsWith("classes/") || name.equals("record.csv");
        Trial trial = planning ? run("pairs", "tonight") : run("check", "--format", "line");
        return trial.out() + trial.err();
    }
}
