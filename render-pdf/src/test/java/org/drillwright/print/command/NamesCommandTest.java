package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.List;
import java.util.TreeSet;
import org.drillwright.print.Example;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a shell is told that completes words: names, one a line, and nothing where there are none. */
class NamesCommandTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource({
        "drills, 'riposte straight steps'",
        "sets, 'thrusts feet'",
        "levels, 'beginner intermediate training'",
        "classes, 'tonight'",
        "terms, ''",
        "people, 'Ada Ben'"
    })
    void each_kind_has_its_names(String kind, String names) {
        SchoolFiles.sound(folder)
                .with("classes/tonight.yaml", "date: 2026-09-01\n")
                .with("roster.yaml", "people:\n  - {name: Ada, level: beginner}\n  - {name: Ben, level: beginner}\n");
        assertEquals(
                new TreeSet<>(List.of(names.split(" "))),
                new TreeSet<>(
                        List.of(Trial.run(folder, "names", kind).out().strip().split("\n"))));
    }

    @Test
    void an_empty_folder_has_none() {
        assertEquals("", Trial.run(folder, "names", "drills").out());
        assertEquals("", Trial.run(folder, "names", "people").out());
    }

    /** 24 people and an assistant; the roster names sets and levels among what is known, which is no hindrance. */
    @Test
    void the_example_schools_people_are_told() throws Exception {
        Example.copyTo(folder);
        assertEquals(25, Trial.run(folder, "names", "people").out().lines().count());
    }

    @Test
    void no_help_tells_of_it() {
        assertFalse(Trial.run(folder, "--help").out().contains("  names "));
    }
}
