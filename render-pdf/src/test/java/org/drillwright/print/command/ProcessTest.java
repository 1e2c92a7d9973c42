package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.drillwright.print.faults.Started;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program as a process of its own, started as a shell would. */
class ProcessTest {

    @TempDir
    Path temporary;

    private Path folder;

    @BeforeEach
    void writeSchool() {
        folder = temporary.resolve("La salle d'armes, été");
        SchoolFiles.sound(folder)
                .with(
                        "drille à faire.yaml",
                        SchoolFiles.withoutSafety().replace("sixte", "octave").replace("Parry of", "La parade de"));
    }

    @Test
    void findings_go_to_the_output_and_errors_to_the_error() throws Exception {
        Trial found = start(Map.of(), List.of(), "check");
        assertEquals(1, found.code());
        assertEquals("", found.err());
        Trial refused = start(Map.of(), List.of(), "check", "--nonsense");
        assertEquals(2, refused.code());
        assertEquals("", refused.out());
        assertEquals(1, refused.err().lines().count());
        assertEquals(0, start(Map.of(), List.of(), "check", "feet").code());
    }

    @Test
    void pipe_is_utf8_and_without_colour_whatever_the_locale() throws Exception {
        List<String> latin = List.of("-Dfile.encoding=ISO-8859-1", "-Duser.language=tr", "-Duser.country=TR");
        Trial check = start(Map.of("TERM", "xterm-256color", "NO_COLOR", "1"), latin, "check", "--format=line");
        assertTrue(check.out().startsWith("drille à faire.yaml:13:5: error: "), check.out());
        assertFalse(check.out().contains("\u001B"));
        Trial plain = start(Map.of("TERM", "xterm-256color"), latin, "check");
        assertFalse(plain.out().contains("\u001B"));
        assertTrue(start(Map.of(), latin, "--help").out().contains("Usage: drillwright"));
    }

    @Test
    void place_that_cannot_be_written_is_two() throws Exception {
        Trial trial = start(Map.of(), List.of(), "cards", "straight", "--out", "riposte.yaml/cards.pdf");
        assertEquals(2, trial.code());
        assertEquals("", trial.out());
        assertEquals(1, trial.err().lines().count(), trial.err());
    }

    @Test
    void without_a_command_a_pipe_gets_the_usage() throws Exception {
        Trial trial = start(Map.of(), List.of());
        assertEquals(2, trial.code());
        assertTrue(trial.err().contains("Usage: drillwright"), trial.err());
    }

    /** Its input is at its end from the beginning, as in a service or behind a pipe: it goes on until it is stopped. */
    @Test
    void watch_in_a_pipe_prints_its_address_and_goes_on() throws Exception {
        List<String> command = Started.java(List.of(), Started.classPath(), Main.class);
        command.add("watch");
        Process process = new ProcessBuilder(command).directory(folder.toFile()).start();
        process.getOutputStream().close();
        try (var lines = process.inputReader()) {
            String address = lines.readLine();
            assertTrue(address.matches("http://127\\.0\\.0\\.1:[0-9]+/"), address);
            assertFalse(process.waitFor(500, TimeUnit.MILLISECONDS));
            try (InputStream page = URI.create(address).toURL().openStream()) {
                assertTrue(read(page).startsWith("<!doctype html>"));
            }
            process.toHandle().destroy();
            assertEquals(null, lines.readLine());
        }
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
    }

    private Trial start(Map<String, String> environment, List<String> options, String... arguments) throws Exception {
        List<String> command = Started.java(options, Started.classPath(), Main.class);
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.environment().put("LC_ALL", "C.UTF-8");
        builder.environment().putAll(environment);
        builder.redirectError(temporary.resolve("err").toFile());
        Process process = builder.start();
        process.getOutputStream().close();
        String out = read(process.getInputStream());
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        return new Trial(process.exitValue(), out, Files.readString(temporary.resolve("err")));
    }

    private static String read(InputStream stream) throws IOException {
        return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    }
}
