package org.drillwright.print.command.install;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class TrainingRunTest {

    private static Set<Path> rehearsals() throws IOException {
        try (Stream<Path> all = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return all.filter(path -> path.getFileName().toString().startsWith("drillwright-rehearsal"))
                    .collect(Collectors.toSet());
        }
    }

    @Test
    void nothing_of_it_is_left() throws IOException {
        Set<Path> before = rehearsals();
        TrainingRun.main(new String[0]);
        assertEquals(before, rehearsals());
    }

    @Test
    void what_is_rehearsed_succeeds() throws IOException {
        TrainingRun.day().forEach((command, code) -> assertEquals(0, code, () -> String.join(" ", command)));
    }
}
