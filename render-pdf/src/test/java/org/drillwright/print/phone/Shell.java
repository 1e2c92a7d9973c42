package org.drillwright.print.phone;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The system's POSIX shell, which judges what a line says. */
final class Shell {

    private Shell() {}

    /** Used by name in a condition of tests. */
    static boolean isThere() {
        return Files.isExecutable(Path.of("/bin/sh"));
    }

    /** What a program would be handed if the line were run; nothing of it is run. */
    static List<String> words(String line) {
        try {
            Process shell = new ProcessBuilder("/bin/sh", "-c", "set -- " + line + "\nprintf '%s\\0' \"$@\"").start();
            String read = new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertEquals(0, shell.waitFor(), line);
            return List.of(read.split("\0"));
        } catch (IOException | InterruptedException broken) {
            throw new AssertionError(broken);
        }
    }

    /** The words behind the program's name. */
    static String[] arguments(String line) {
        List<String> words = words(line);
        assertEquals("drillwright", words.get(0));
        return words.subList(1, words.size()).toArray(String[]::new);
    }
}
