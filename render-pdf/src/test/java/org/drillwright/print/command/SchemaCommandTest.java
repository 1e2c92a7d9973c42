package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SchemaCommandTest {

    @TempDir
    Path folder;

    @Test
    void a_drills_schema_knows_the_school() {
        SchoolFiles.sound(folder)
                .with("school.yaml", "works-on: [la main]\nlevels: [{name: beginner}, {name: intermediate}]\n");
        Trial trial = Trial.run(folder, "schema");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(
                trial.out().startsWith("{\n  \"$schema\" : \"https://json-schema.org/draft/2020-12/schema\""),
                trial.out());
        assertTrue(trial.out().contains("\"la main\""), trial.out());
        for (String drill : List.of("riposte", "straight")) {
            assertTrue(trial.out().contains("\"label\" : \"" + drill + "\""), trial.out());
        }
    }

    @Test
    void the_settings_have_one_too() {
        Trial trial = Trial.run(folder, "schema", "school");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(trial.out().contains("\"class-minutes\""), trial.out());
    }

    @Test
    void and_a_term_that_names_the_schools_people_and_drills() {
        PlanFiles.of(folder, 1, 0);
        Trial trial = Trial.run(folder, "schema", "term");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(trial.out().contains("\"New0\""), trial.out());
        assertTrue(trial.out().contains("\"riposte\""), trial.out());
    }

    @Test
    void a_file_is_written_whole_and_nothing_is_left_beside() throws IOException {
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "schema", "--out", "drill.schema.json");
        assertEquals(0, trial.code(), trial.err());
        assertEquals(Trial.run(folder, "schema").out(), Files.readString(folder.resolve("drill.schema.json")));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(5, files.count());
        }
    }

    @Test
    void no_drill_is_overwritten() {
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "schema", "--out", "riposte.yaml");
        assertEquals(2, trial.code());
        assertEquals("'riposte.yaml' does not end in .json.\n", trial.err());
    }

    @Test
    void broken_settings_are_mended_first() {
        SchoolFiles.sound(folder).with("school.yaml", "levls: []\n");
        Trial trial = Trial.run(folder, "schema");
        assertEquals(1, trial.code());
        assertEquals("", trial.out());
        assertTrue(trial.err().contains("(unknown-key)"), trial.err());
        assertFalse(Trial.run(folder, "schema", "nonsense").code() == 0);
    }
}
