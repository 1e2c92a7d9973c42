package org.drillwright.print.command.write;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a killed run left beside its place is swept up by a later one; what may still be wanted stays. */
class LeftPartsTest {

    /** Higher than any number that Linux gives to a process. */
    private static final long OVER = 99_999_999;

    @TempDir
    Path folder;

    private void left(String name, Duration age) throws IOException {
        Path file = Files.writeString(folder.resolve(name), "half a card");
        FileTime now = Files.getLastModifiedTime(file);
        Files.setLastModifiedTime(file, FileTime.from(now.toInstant().minus(age)));
    }

    private List<String> afterPrinting() throws IOException {
        Parts parts = new Parts(folder.resolve("cards.pdf"), Kind.PDF);
        parts.add(new byte[] {'%', 'P', 'D', 'F'});
        parts.place((file, number, of) -> file);
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    private static String part(String of, long process, int number) {
        return of + "." + process + "-%016x.part".formatted(number);
    }

    /** Whatever is written into the folder next sweeps it. */
    @Test
    void the_parts_of_a_run_that_is_over_go_after_an_hour() throws IOException {
        left(part("cards.pdf", OVER, 1), Duration.ofMinutes(61));
        left(part("riposte.yaml", OVER, 2), Duration.ofDays(400));
        assertEquals(List.of("cards.pdf"), afterPrinting());
    }

    @Test
    void what_is_younger_or_of_a_run_at_work_or_not_ours_stays() throws IOException {
        long atWork = ProcessHandle.current().pid();
        List<String> stay = List.of(
                part("cards.pdf", OVER, 3),
                part("cards.pdf", atWork, 77),
                "cards.pdf.mine.part",
                "cards.pdf.part",
                "cards.pdf." + OVER + "-1.part",
                part("cards.pdf", OVER, 4) + ".yaml");
        left(stay.get(0), Duration.ofMinutes(59));
        for (String other : stay.subList(1, stay.size())) {
            left(other, Duration.ofDays(30));
        }
        Files.createDirectory(folder.resolve(part("folder", OVER, 5)));
        List<String> all = Stream.of(Stream.of("cards.pdf", part("folder", OVER, 5)), stay.stream())
                .flatMap(names -> names)
                .sorted()
                .toList();
        assertEquals(all, afterPrinting());
    }
}
