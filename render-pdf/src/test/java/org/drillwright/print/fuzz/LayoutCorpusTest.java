package org.drillwright.print.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The inputs that are kept, each laid and written once. Those that once broke something are named for what they broke. */
class LayoutCorpusTest {

    static List<Path> inputs() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src", "fuzz", "corpus", "layout"))) {
            return files.sorted().toList();
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("inputs")
    void every_word_is_on_a_card_or_there_is_none(Path input) throws IOException {
        LayoutTarget.fuzzerTestOneInput(Files.readAllBytes(input));
    }
}
