package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SchoolCommandTest {

    @TempDir
    Path folder;

    @Test
    void each_setting_says_where_it_comes_from() {
        SchoolFiles.sound(folder)
                .with("school.yaml", SchoolFiles.SETTINGS + "gear:\n  sabre: [mask, glove]\nseconds-a-count: 2.5\n");
        Trial trial = Trial.run(folder, "school");
        assertEquals(0, trial.code(), trial.out());
        String table = trial.out().replaceAll(" +", " ");
        assertTrue(table.contains("\nname Saltmarsh Hall (invented) school.yaml, line 1\n"), table);
        assertTrue(table.contains("\nlevels beginner: turns one, blades none default\n"), table);
        assertTrue(table.contains("\nsets / thrusts 2 drills school.yaml, line 3\n"), table);
        assertTrue(table.contains("\nsets / feet every drill of level beginner school.yaml, line 5\n"), table);
        assertTrue(table.contains("\ngear / sabre mask, glove school.yaml, line 8\n"), table);
        assertTrue(table.contains("\ncard a6 default\n"), table);
        assertTrue(table.contains("\nseconds-a-count 2.5 school.yaml, line 9\n"), table);
    }

    @Test
    void defaults_are_shown_without_any_settings() {
        Trial trial = Trial.run(folder, "school");
        assertEquals(0, trial.code());
        assertTrue(trial.out().lines().skip(2).allMatch(line -> line.endsWith("default") || line.startsWith("  ")));
    }

    @Test
    void settings_with_errors_are_not_in_force() {
        Trial trial = Trial.run(
                SchoolFiles.sound(folder).with("school.yaml", "sheet: b5\n").root(), "school");
        assertEquals(1, trial.code());
        assertTrue(trial.out().startsWith("school.yaml, line 1, column 8: error (unknown-word)"), trial.out());
    }
}
