package org.drillwright.print.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.drillwright.print.command.SchoolFiles;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The stack is a quarter of Java's usual one: files that stand as deep as they may, or deeper, need no more. */
class StackTest {

    /** How deep Java's own frames reach hangs on what it has compiled by then, so that less would do at times only. */
    private static final List<String> QUARTER = List.of("-Xss256k");

    /** Java rounds what is less up to its own least. */
    private static final List<String> SMALLEST = List.of("-Xss136k");

    @TempDir
    Path folder;

    @Test
    void deep_files_are_refused_in_a_finding_each_and_not_by_an_overflow() throws Exception {
        SchoolFiles.sound(folder);
        Files.writeString(folder.resolve("brackets.yaml"), "a: " + "[".repeat(100_000));
        Files.writeString(folder.resolve("dashes.yaml"), "a:\n" + "- ".repeat(100_000));
        Files.writeString(folder.resolve("twelve.yaml"), "a: " + "[".repeat(11) + "]".repeat(11) + "\n");
        Started deep = Started.run(folder, List.of(), QUARTER, "check");
        assertEquals(1, deep.code(), deep.err());
        assertEquals("", deep.err());
        assertTrue(deep.out().contains("The key 'a' is unknown here."), deep.out());
        assertEquals(2, deep.out().split("more than 12 deep", -1).length - 1, deep.out());
    }

    /** A card's pages are drawn deeper than a file is read; a quarter of Java's usual stack is plenty, an eighth is not. */
    @Test
    void cards_are_printed_or_it_is_said_how_to_give_more() throws Exception {
        SchoolFiles.sound(folder);
        String[] cards = {"cards", "--back", "pictures", "--out", "c.pdf"};
        Started enough = Started.run(folder, List.of(), QUARTER, cards);
        assertEquals(0, enough.code(), enough.err());
        Files.delete(folder.resolve("c.pdf"));
        Started small = Started.run(folder, List.of(), SMALLEST, cards);
        assertEquals(2, small.code(), small.out());
        assertTrue(small.isOneSentence(), small.err());
        assertTrue(small.err().startsWith("Drillwright ran out of memory for its stack."), small.err());
        assertTrue(small.err().contains("JDK_JAVA_OPTIONS to -Xss8m"), small.err());
        try (var files = Files.list(folder)) {
            assertTrue(files.noneMatch(file -> file.toString().contains("c.pdf")));
        }
    }
}
