package org.drillwright.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The inputs that are kept, each put to its target once. Those that once broke something are named for what they broke. */
class CorpusTest {

    private static final Path CORPORA = Path.of("src", "fuzz", "corpus");

    /** Together they are to cost the build no more than a few seconds. */
    private static final int AT_MOST = 80;

    private static final int BYTES = 4_096;

    @ParameterizedTest(name = "{0}")
    @MethodSource("reading")
    void reading(Path input) throws IOException {
        ReadingTarget.fuzzerTestOneInput(Files.readAllBytes(input));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("words")
    void words(Path input) throws IOException {
        WordsTarget.fuzzerTestOneInput(Files.readAllBytes(input));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("playing")
    void playing(Path input) throws IOException {
        PlayingTarget.fuzzerTestOneInput(Files.readAllBytes(input));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("record")
    void record(Path input) throws IOException {
        RecordTarget.fuzzerTestOneInput(Files.readAllBytes(input));
    }

    static List<Path> reading() throws IOException {
        return inputs("reading");
    }

    static List<Path> words() throws IOException {
        return inputs("words");
    }

    static List<Path> playing() throws IOException {
        return inputs("playing");
    }

    static List<Path> record() throws IOException {
        return inputs("record");
    }

    private static List<Path> inputs(String target) throws IOException {
        try (Stream<Path> files = Files.list(CORPORA.resolve(target))) {
            return files.sorted().toList();
        }
    }

    @Test
    void the_corpora_are_small() throws IOException {
        for (String target : List.of("reading", "words", "playing", "record")) {
            List<Path> inputs = inputs(target);
            assertTrue(inputs.size() >= 10 && inputs.size() <= AT_MOST, () -> target + ": " + inputs.size());
            for (Path input : inputs) {
                assertTrue(Files.size(input) <= BYTES, input::toString);
            }
        }
    }
}
