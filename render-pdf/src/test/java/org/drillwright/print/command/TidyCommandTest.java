package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TidyCommandTest {

    @TempDir
    Path folder;

    private Path untidy;
    private String before;

    @BeforeEach
    void school() {
        SchoolFiles.sound(folder);
        untidy = folder.resolve("riposte.yaml");
        before = "# Ours.\n"
                + SchoolFiles.riposte().replace("weapon: foil\n", "").replace("steps:", "weapon: \"foil\"\nsteps:");
        new SchoolFiles(folder).with("riposte.yaml", before);
        assertEquals(0, Trial.run(folder, "tidy", "--write", "straight", "feet").code());
    }

    @Test
    void shows_the_difference_and_writes_nothing() throws IOException {
        Trial trial = Trial.run(folder, "tidy");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(trial.out().startsWith("--- riposte.yaml\n+++ riposte.yaml\n@@ "), trial.out());
        assertTrue(trial.out().contains("\n+weapon: foil\n"), trial.out());
        assertTrue(trial.out().contains("\n-weapon: \"foil\"\n"), trial.out());
        assertTrue(
                trial.out().endsWith("3 drills: 1 to tidy. Nothing was written; use --write for that.\n"), trial.out());
        assertEquals(before, Files.readString(untidy));
    }

    @Test
    void writes_once_and_then_has_nothing_to_do() throws IOException {
        Trial trial = Trial.run(folder, "tidy", "--write");
        assertEquals(new Trial(0, "Written: riposte.yaml\n3 drills: 1 tidied.\n", ""), trial);
        String after = Files.readString(untidy);
        assertTrue(after.startsWith("# Ours.\ntitle: Parry of quarte, straight riposte\nlevel: "), after);
        assertEquals(new Trial(0, "3 drills: nothing to tidy.\n", ""), Trial.run(folder, "tidy", "--check"));
        assertEquals(after, Files.readString(untidy));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(4, files.count(), "nothing is left beside");
        }
    }

    @Test
    void check_names_what_would_change_and_ends_with_one() throws IOException {
        Trial trial = Trial.run(folder, "tidy", "--check");
        assertEquals(1, trial.code());
        assertTrue(trial.out().startsWith("Would change: riposte.yaml\n"), trial.out());
        assertEquals(before, Files.readString(untidy));
        assertEquals(0, Trial.run(folder, "tidy", "--check", "straight").code());
    }

    @Test
    void a_file_with_findings_of_reading_is_named_and_left_alone() throws IOException {
        String warned = before.replace("weapon: \"foil\"", "weapon: \"foil\"\npurpose: two words # lost");
        new SchoolFiles(folder).with("riposte.yaml", warned);
        Trial trial = Trial.run(folder, "tidy", "--write");
        assertEquals(0, trial.code());
        assertTrue(trial.out().startsWith("riposte.yaml was left alone. "), trial.out());
        assertEquals(warned, Files.readString(untidy));
        new SchoolFiles(folder).with("riposte.yaml", "titel: x\n");
        assertEquals(1, Trial.run(folder, "tidy", "--write").code());
    }

    @Test
    void permissions_stay() throws IOException {
        if (Files.getFileStore(folder).supportsFileAttributeView("posix")) {
            var permissions = java.nio.file.attribute.PosixFilePermissions.fromString("rw-rw----");
            Files.setPosixFilePermissions(untidy, permissions);
            assertEquals(0, Trial.run(folder, "tidy", "--write").code());
            assertEquals(permissions, Files.getPosixFilePermissions(untidy));
        }
    }

    /** What 'new' writes is tidy as it is, at every level. */
    @Test
    void new_drills_are_tidy() {
        assertEquals(0, Trial.run(folder, "new", "First").code());
        assertEquals(0, Trial.run(folder, "new", "Second", "--solo").code());
        assertEquals(0, Trial.run(folder, "new", "Third", "--level", "beginner").code());
        Trial trial = Trial.run(folder, "tidy", "first", "second", "third");
        assertEquals(new Trial(0, "3 drills: nothing to tidy.\n", ""), trial);
    }

    @Test
    void one_or_the_other() {
        Trial trial = Trial.run(folder, "tidy", "--write", "--check");
        assertEquals(new Trial(2, "", "Use --write or --check, not both.\n"), trial);
    }
}
