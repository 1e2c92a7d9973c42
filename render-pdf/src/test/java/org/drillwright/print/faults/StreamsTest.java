package org.drillwright.print.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.print.command.Main;
import org.drillwright.print.command.SchoolFiles;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What the program stands among: pipes whose reader leaves, full streams, folders that are gone, little memory. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "these are of POSIX")
class StreamsTest {

    @TempDir
    Path temporary;

    private Path folder;

    @BeforeEach
    void school() {
        folder = temporary.resolve("school");
        SchoolFiles.sound(folder);
    }

    /** A line of shell in which {@code PROGRAM} is the program. */
    private Started shell(String line) throws Exception {
        String java = Started.java(List.of(), Started.classPath(), Main.class).stream()
                .map(word -> "'" + word + "'")
                .collect(Collectors.joining(" "));
        return Started.run(new ProcessBuilder("sh", "-c", line.replace("PROGRAM", java)).directory(folder.toFile()));
    }

    @Test
    void a_reader_who_leaves_is_no_fault() throws Exception {
        Started words = shell("{ PROGRAM words; echo $? >&2; } | head -1");
        assertEquals("0\n", words.err());
        Files.writeString(folder.resolve("many.yaml"), "titel: x\n" + "k: 1\n".repeat(2_000));
        Started json = shell("{ PROGRAM check --format json; echo $? >&2; } | head -c 10");
        assertEquals("1\n", json.err());
        assertEquals(10, json.out().length());
    }

    @Test
    void a_stream_that_is_full_is_a_sentence() throws Exception {
        assumeTrue(Files.exists(Path.of("/dev/full")), "there is no /dev/full");
        Started full = shell("PROGRAM words > /dev/full");
        assertEquals(2, full.code());
        assertTrue(full.isOneSentence(), full.err());
        assertEquals("Not everything could be written to the standard output.\n", full.err());
    }

    @Test
    void without_a_home_and_without_a_place_for_passing_files_cards_are_printed() throws Exception {
        Started printed = Started.run(
                folder,
                List.of("env", "-u", "HOME", "TMPDIR=/nowhere"),
                List.of("-Djava.io.tmpdir=/nowhere", "-Duser.home=/nowhere"),
                "cards",
                "straight",
                "--out",
                "c.pdf");
        assertEquals(0, printed.code(), printed.err());
    }

    @Test
    void in_a_folder_that_is_gone_the_starter_says_so() throws Exception {
        Path starter =
                Path.of("..", "drills", "src", "drillwright").toAbsolutePath().normalize();
        assumeTrue(Files.exists(starter), "the starter is not beside this module");
        Started gone = shell("mkdir gone && cd gone && rmdir ../gone && sh '" + starter + "' check");
        assertEquals(2, gone.code());
        assertTrue(
                gone.err().endsWith("The folder you are in is gone. Go to another one and start Drillwright again.\n"),
                gone.err());
    }

    /** The cards that lie there stay, and nothing is left beside them. */
    @Test
    void too_little_memory_is_a_sentence_that_says_how_to_give_more() throws Exception {
        Files.writeString(folder.resolve("c.pdf"), "%PDF-1.7 the old one");
        for (String most : List.of("-Xmx6m", "-Xmx10m")) {
            Started small = Started.run(folder, List.of(), List.of(most), "cards", "--out", "c.pdf");
            assertEquals(2, small.code(), small.out());
            assertTrue(small.isOneSentence(), small.err());
            assertTrue(small.err().startsWith("Drillwright ran out of memory, of which it may use "), small.err());
            assertTrue(small.err().contains("JDK_JAVA_OPTIONS to -Xmx2g"), small.err());
        }
        assertEquals("%PDF-1.7 the old one", Files.readString(folder.resolve("c.pdf")));
        try (var files = Files.list(folder)) {
            assertTrue(files.noneMatch(file -> file.toString().endsWith(".part")));
        }
    }
}
