package org.drillwright.print.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.command.Main;
import org.drillwright.print.command.Trial;
import org.drillwright.print.faults.Started;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What has a file's name and is none: devices, pipes, links; and files that may not be read. */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "these are of POSIX")
class OddFilesTest {

    @TempDir
    Path folder;

    private School school;

    @BeforeEach
    void school() {
        school = School.in(folder);
    }

    private static void pipe(Path file) throws Exception {
        Files.deleteIfExists(file);
        assertEquals(
                0, Started.run(new ProcessBuilder("mkfifo", file.toString())).code());
    }

    private void link(String name, String target) throws IOException {
        Path link = folder.resolve(name);
        Files.deleteIfExists(link);
        Files.createSymbolicLink(link, Path.of(target));
    }

    @Test
    void links_devices_and_pipes_are_not_read_as_drills_and_that_is_said_once() throws Exception {
        pipe(folder.resolve("a.yaml"));
        link("zero.yaml", "/dev/zero");
        link("random.yaml", "/dev/random");
        link("out.yaml", "/etc/hostname");
        link("loop1.yaml", "loop2.yaml");
        link("loop2.yaml", "loop1.yaml");
        link("round", ".");
        Trial trial = school.run("check", "--format", "line");
        assertEquals(0, trial.code(), trial.out());
        assertEquals(
                "a.yaml:1:1: note: This and 5 more are links or devices, not files; they were not read. Put the"
                        + " file itself here; links are not followed. (not-plain-text)",
                trial.out().lines().findFirst().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(strings = {"school.yaml", "roster.yaml", "record.csv", "prints.csv"})
    void a_pipe_or_an_endless_file_where_a_school_keeps_one_is_a_sentence(String name) throws Exception {
        for (boolean pipe : new boolean[] {true, false}) {
            if (pipe) {
                pipe(folder.resolve(name));
            } else {
                link(name, "/dev/zero");
            }
            Trial trial = name.equals("prints.csv")
                    ? school.run("cards", "straight", "--changed", "--out", "c.pdf")
                    : school.run("record", "tonight", "--plan", "none");
            assertTrue(trial.code() > 0);
            String said = trial.out() + trial.err();
            assertTrue(said.contains(name) && said.contains("is not a file that can be read"), said);
            assertTrue(Files.notExists(folder.resolve("c.pdf")));
        }
    }

    @Test
    void what_is_named_on_the_command_line_and_is_no_file_is_refused() throws Exception {
        pipe(folder.resolve("pipe.yaml"));
        for (String named : List.of("pipe.yaml", "/dev/zero", "/dev/random")) {
            Trial trial = school.run("check", named);
            assertEquals(2, trial.code());
            assertEquals(1, trial.err().lines().count(), trial.err());
            assertEquals(2, school.run("pairs", named).code());
        }
    }

    @Test
    void nothing_but_a_file_is_ever_written_to() throws Exception {
        pipe(folder.resolve("pipe.pdf"));
        link("nowhere.pdf", "/nowhere/at/all.pdf");
        link("full.pdf", "/dev/full");
        for (String out :
                List.of("pipe.pdf", "nowhere.pdf", "full.pdf", "/dev/null", ".", "feet", "", "straight.yaml/c.pdf")) {
            for (String command : List.of("cards", "progress", "booklet")) {
                Trial trial = school.run(command, "--out", out);
                assertEquals(2, trial.code(), command + " " + out + trial);
                assertEquals(1, trial.err().lines().count(), trial.err());
            }
        }
        assertTrue(Files.isSymbolicLink(folder.resolve("nowhere.pdf")));
        assertTrue(Files.isSymbolicLink(folder.resolve("full.pdf")));
        assertTrue(Files.exists(Path.of("/dev/null")) && !Files.isRegularFile(Path.of("/dev/null")));
        assertTrue(Files.notExists(Path.of("/nowhere")));
    }

    @Test
    void a_link_to_a_file_elsewhere_is_written_through_and_folders_that_lack_are_made() throws IOException {
        Path elsewhere = Files.createDirectories(folder.resolve("elsewhere"));
        Files.createFile(elsewhere.resolve("c.pdf"));
        link("c.pdf", "elsewhere/c.pdf");
        assertEquals(0, school.run("cards", "straight", "--out", "c.pdf").code());
        assertTrue(Files.isSymbolicLink(folder.resolve("c.pdf")));
        assertTrue(Files.size(elsewhere.resolve("c.pdf")) > 1000);
        assertEquals(
                0, school.run("cards", "straight", "--out", "new/folder/c.pdf").code());
    }

    /** Root may read everything, so root has somebody else try it. */
    @Test
    void what_may_not_be_read_or_written_is_said_in_a_sentence() throws Exception {
        assumeTrue(System.getProperty("user.name").equals("root"), "only root can become somebody else");
        assumeTrue(Started.run(new ProcessBuilder("setpriv", "--version")).code() == 0, "there is no setpriv");
        Path program = Files.createDirectory(folder.resolve("target"));
        String classPath = Started.classPathIn(program);
        open(folder);
        assumeTrue(other(classPath, "check").out().contains("3 drills"), "somebody else cannot start Java here");
        Files.setPosixFilePermissions(folder.resolve("straight.yaml"), PosixFilePermissions.fromString("---------"));
        Started read = other(classPath, "check", "--format", "line");
        assertEquals(1, read.code());
        assertTrue(read.out().contains("straight.yaml:1:1: error: This file could not be opened."), read.out());
        Started written = other(classPath, "cards", "riposte", "--out", "c.pdf");
        assertEquals(2, written.code());
        assertTrue(written.isOneSentence() && written.err().endsWith("permission denied.\n"), written.err());
        Files.setPosixFilePermissions(folder.resolve("feet"), PosixFilePermissions.fromString("---------"));
        String closed = other(classPath, "check", "--format", "line").out();
        assertTrue(closed.contains("feet:1:1: warning: This folder could not be opened"), closed);
        assertTrue(!closed.contains("ids-too-alike"), closed);
        Files.setPosixFilePermissions(folder.resolve("roster.yaml"), PosixFilePermissions.fromString("---------"));
        Started planned = other(classPath, "progress");
        assertTrue(planned.code() == 2 && planned.isOneSentence(), planned.err());
    }

    /** Runs the program as nobody, whose number is this on most systems. */
    private Started other(String classPath, String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of("setpriv", "--reuid=65534", "--regid=65534", "--clear-groups"));
        command.addAll(Started.java(List.of(), classPath, Main.class));
        command.addAll(List.of(arguments));
        return Started.run(new ProcessBuilder(command).directory(folder.toFile()));
    }

    private static void open(Path root) throws IOException {
        try (var all = Files.walk(root)) {
            for (Path one : all.toList()) {
                Files.setPosixFilePermissions(
                        one, PosixFilePermissions.fromString(Files.isDirectory(one) ? "rwxr-xr-x" : "rw-r--r--"));
            }
        }
    }
}
