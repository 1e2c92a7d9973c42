package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CoverageCommandTest {

    @TempDir
    Path folder;

    @Test
    void a_set_as_a_table() {
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "coverage", "thrusts");
        assertEquals(0, trial.code());
        assertTrue(trial.out().startsWith("The set thrusts, 2 drills:\n"), trial.out());
        assertTrue(trial.out().contains("  quarte               1 of 2  riposte\n"), trial.out());
        assertTrue(
                trial.out().contains("parries: prime, seconde, tierce, quinte, sixte, septime, octave"), trial.out());
    }

    @Test
    void a_set_for_programs() {
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "coverage", "--format", "json", "thrusts");
        assertTrue(trial.out().contains("\"drills\" : [ \"riposte\", \"straight\" ]"), trial.out());
        assertTrue(trial.out().contains("\"key\" : \"high-inside\""), trial.out());
    }

    @Test
    void what_cannot_be_read_is_named() {
        SchoolFiles.sound(folder).with("broken.yaml", "title: One: two\n");
        Trial trial = Trial.run(folder, "coverage");
        assertEquals(1, trial.code());
        assertEquals("Left out, because they cannot be read or are missing: broken.\n", trial.err());
    }
}
