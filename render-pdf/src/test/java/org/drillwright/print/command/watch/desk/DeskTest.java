package org.drillwright.print.command.watch.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DeskTest {

    private static final int DRILLS = 40;

    private final AtomicInteger read = new AtomicInteger();
    private int saved;

    @TempDir
    Path folder;

    private void save(int drill, String level, String how) throws IOException {
        Path file = folder.resolve("d" + drill + ".yaml");
        Files.writeString(
                file, String.format("""
                title: Drill %d
                level: %s
                form: solo
                weapon: none
                needs: [%s]
                start: On guard, out of distance.
                opening: Salute. On guard.
                steps:
                  - leader: Advance!
                    follower: Advance one step, %s.
                    distance: out
                closing: Salute.
                """, drill, level, drill == 0 ? "" : "d" + (drill - 1), how + " " + drill));
        FileTime time = FileTime.from(Instant.parse("2026-09-01T12:00:00Z").plusSeconds(10L * saved++));
        Files.setLastModifiedTime(file, time);
    }

    private Desk desk() throws IOException {
        String listed =
                IntStream.range(0, DRILLS).mapToObj(drill -> "d" + drill).collect(Collectors.joining(", "));
        Files.writeString(folder.resolve("school.yaml"), "sets:\n  all: {drills: [" + listed + "]}\n");
        for (int drill = DRILLS - 1; drill >= 0; drill--) {
            save(drill, "beginner", "softly");
        }
        return Desk.open(folder, (done, all) -> read.incrementAndGet());
    }

    /** The drill that was saved last before is read again with it: its time alone cannot tell. */
    @Test
    void a_save_reads_the_one_file_that_was_saved() throws IOException {
        Desk desk = desk();
        assertEquals(DRILLS, read.getAndSet(0));
        save(0, "beginner", "calmly");
        assertEquals(List.of("d0.yaml"), desk.look().orElseThrow().changed());
        assertEquals(1, read.getAndSet(0));
        save(5, "beginner", "calmly");
        assertEquals(List.of("d5.yaml"), desk.look().orElseThrow().changed());
        assertEquals(2, read.getAndSet(0));
        assertEquals(Optional.empty(), desk.look());
        assertEquals(1, read.get());
    }

    /** One that needs the drill has something new said of it; what was drawn of the others is kept. */
    @Test
    void a_change_shows_on_those_it_bears_on() throws IOException {
        Desk desk = desk();
        Object drawn = desk.now().sheet("d9.yaml").orElseThrow().pictures();
        save(3, "training", "softly");
        Change change = desk.look().orElseThrow();
        assertEquals(List.of("d3.yaml", "d4.yaml"), change.changed());
        assertEquals(List.of(), change.gone());
        assertSame(drawn, desk.now().sheet("d9.yaml").orElseThrow().pictures());
        assertEquals(1, desk.now().sheet("d9.yaml").orElseThrow().revision());
        assertEquals(2, desk.now().sheet("d4.yaml").orElseThrow().revision());
    }
}
