package org.drillwright.print.command.install;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.drillwright.print.command.Program;
import org.drillwright.print.command.console.Invocation;
import org.drillwright.print.command.console.Opener;

/**
 * Does once, in a folder of its own that is gone afterwards, what people do every day, and says nothing. Java, started
 * with this class, learns which classes a usual run loads and can keep them in an archive.
 */
public final class TrainingRun {

    private static final List<List<String>> DAY = List.of(
            List.of("--help"),
            List.of("new", "Rehearsed"),
            List.of("check"),
            List.of("check", "--format", "json"),
            List.of("cards", "--back", "pictures", "--out", "rehearsed.pdf"),
            List.of("explain", "rehearsed"),
            List.of("words", "quarte"));

    private TrainingRun() {}

    /** @param arguments none */
    public static void main(String[] arguments) throws IOException {
        day();
    }

    /** Each command and how it ended. */
    static Map<List<String>, Integer> day() throws IOException {
        Path folder = Files.createTempDirectory("drillwright-rehearsal");
        Map<List<String>, Integer> codes = new LinkedHashMap<>();
        try {
            DAY.forEach(command -> codes.put(command, Program.run(silent(folder), command.toArray(String[]::new))));
        } finally {
            remove(folder);
        }
        return codes;
    }

    /** A run that says nothing and is asked nothing. */
    static Invocation silent(Path folder) {
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        return new Invocation(
                nowhere,
                nowhere,
                nowhere,
                new BufferedReader(Reader.nullReader()),
                false,
                () -> 80,
                false,
                folder,
                Optional.empty(),
                Opener.NONE,
                Clock.systemUTC(),
                () -> Locale.ENGLISH,
                () -> Locale.ENGLISH);
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> within = Files.walk(folder)) {
            within.sorted((one, other) -> other.compareTo(one)).forEach(TrainingRun::delete);
        }
    }

    private static void delete(Path path) {
        try {
            Files.delete(path);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }
}
