package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WatchCommandTest {

    @TempDir
    Path folder;

    @Test
    void on_a_terminal_enter_ends_it() {
        SchoolFiles.sound(folder);
        Trial trial = Trial.talk(folder, "\n", "watch", "--no-browser");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(
                trial.out().matches("http://127\\.0\\.0\\.1:[0-9]+/\nSave a drill and .* Press Enter here to end\\.\n"),
                trial.out());
    }

    @Test
    void a_drill_that_is_named_is_in_the_address() {
        SchoolFiles.sound(folder);
        Trial trial = Trial.talk(folder, "\n", "watch", "steps", "--no-browser");
        assertTrue(trial.out().matches("(?s)http://127\\.0\\.0\\.1:[0-9]+/#feet%2Fsteps\\.yaml\n.*"), trial.out());
    }

    @Test
    void a_folder_without_a_drill_is_watched_too() {
        assertEquals(0, Trial.talk(folder, "\n", "watch", "--no-browser").code());
    }

    @Test
    void a_port_that_is_taken_is_one_line_and_two() throws Exception {
        SchoolFiles.sound(folder);
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            Trial trial = Trial.run(folder, "watch", "--port", String.valueOf(taken.getLocalPort()));
            assertEquals(2, trial.code());
            assertEquals(1, trial.err().lines().count(), trial.err());
            assertTrue(trial.err().contains("is taken"), trial.err());
        }
    }
}
