package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.drillwright.check.jury.Rules;
import org.drillwright.read.ReadingRule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CheckCommandTest {

    @TempDir
    Path folder;

    @Test
    void sound_school_ends_with_the_tally_and_zero() {
        SchoolFiles.sound(folder);
        assertEquals(
                new Trial(0, "3 drills: no errors, no warnings, no notes.\n7 counts: all judged.\n", ""),
                Trial.run(folder, "check", "--strict"));
    }

    @Test
    void error_is_shown_with_its_place_and_ends_with_one() {
        SchoolFiles.sound(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        Trial trial = Trial.run(folder, "check");
        assertEquals(1, trial.code());
        assertTrue(
                trial.out().startsWith("riposte.yaml, line 13, column 5: error (safety-note-missing)\n   13 | "),
                trial.out());
        assertTrue(trial.out().contains("\n3 drills: 1 error, no warnings, no notes.\n"), trial.out());
        assertEquals("", trial.err());
    }

    @Test
    void warning_fails_only_when_strict() {
        SchoolFiles.sound(folder).with("riposte.yaml", SchoolFiles.warned());
        assertEquals(0, Trial.run(folder, "check").code());
        Trial strict = Trial.run(folder, "check", "--strict");
        assertEquals(1, strict.code());
        assertTrue(strict.out().contains("With --strict a warning fails the check.\n"), strict.out());
    }

    @Test
    void note_never_fails() {
        SchoolFiles.sound(folder)
                .with("other.yml", SchoolFiles.steps().replace("Steps", "Jumps").replace("Advance", "Jump forward"));
        Trial trial = Trial.run(folder, "check", "--strict");
        assertEquals(0, trial.code(), trial.out());
        assertTrue(trial.out().contains("note (ids-too-alike)"), trial.out());
    }

    @Test
    void lines_name_files_from_where_the_caller_stands() {
        SchoolFiles.sound(folder.resolve("school")).with("riposte.yaml", SchoolFiles.withoutSafety());
        Trial trial = Trial.run(folder, "check", "--format", "line", "school");
        assertEquals(1, trial.code());
        assertEquals(1, trial.out().lines().count());
        assertTrue(trial.out().startsWith("school/riposte.yaml:13:5: error: "), trial.out());
    }

    @Test
    void json_is_nothing_but_data() throws IOException {
        SchoolFiles.sound(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        Trial trial = Trial.run(folder, "check", "--format", "JSON");
        assertEquals(1, trial.code());
        int tokens = 0;
        try (JsonParser json = new JsonFactory().createParser(trial.out())) {
            while (json.nextToken() != null) {
                tokens++;
            }
        }
        assertTrue(tokens > 20);
    }

    @Test
    void json_names_files_as_sarif_does() {
        SchoolFiles.sound(folder.resolve("my school")).with("riposte.yaml", SchoolFiles.withoutSafety());
        String above =
                Trial.run(folder, "check", "--format", "json", "my school").out();
        assertTrue(above.contains("\"file\" : \"my school/riposte.yaml\""), above);
        String within = Trial.run(folder.resolve("my school/feet"), "check", "--format", "json")
                .out();
        assertTrue(within.contains("\"file\" : \"riposte.yaml\""), within);
    }

    private static final String ROSTER = "people:\n  - {name: Ash}\n  - {name: Bo}\n";

    /** What lies beside the drills, right and broken, and where the fault stands. */
    @ParameterizedTest
    @CsvSource(delimiter = ';', textBlock = """
            roster.yaml; people: [{name: Ash}]; people: [{nam: Ash}]; roster.yaml, line 1, column 11: error
            roster.yaml; people: [{name: Ash}]; people; roster.yaml, line 1, column 1: error (wrong-kind)
            classes/tonight.yaml; {date: 2026-09-14, set: thrusts}; {date: 2026-09-14, set: thrust}; classes/tonight.yaml, line 1, column 25: error
            terms/winter.yaml; {dates: [{key: a, date: 2026-09-14}], groups: [{name: all, drills: [riposte]}]}; {dates: [{kee: a, date: 2026-09-14}], groups: [{name: all, drills: [riposte]}]}; terms/winter.yaml, line 1, column 11: error
            record.csv; 'date,person,drill,event,with'; 'day,who'; record.csv, line 1, column 1: error
            classes/plans/2026-09-14-abc.yaml; ; 'plan: ['; classes/plans/2026-09-14-abc.yaml, line 1
            """)
    void whatLiesBesideTheDrillsIsCheckedAsWhatItIs(String file, String right, String broken, String found) {
        SchoolFiles school = SchoolFiles.sound(folder).with("roster.yaml", ROSTER);
        if (right != null) {
            school.with(file, right + "\n");
            assertEquals(0, Trial.run(folder, "check", "--strict", file).code());
        }
        school.with(file, broken + "\n");
        for (String[] command : List.of(
                new String[] {"check"}, new String[] {"check", file}, new String[] {"check", "straight", file})) {
            Trial trial = Trial.run(folder, command);
            assertEquals(1, trial.code(), trial.out());
            assertEquals(
                    1,
                    trial.out().lines().filter(line -> line.startsWith(found)).count(),
                    trial.out());
        }
        assertEquals(0, Trial.run(folder, "check", "straight").code());
    }

    @Test
    void a_broken_roster_is_told_of_where_a_class_rests_on_it() {
        SchoolFiles.sound(folder)
                .with("roster.yaml", "people: [{nam: Ash}]\n")
                .with("classes/tonight.yaml", "{date: 2026-09-14, set: thrusts}\n");
        Trial trial = Trial.run(folder, "check", "classes/tonight.yaml");
        assertEquals(1, trial.code(), trial.out());
        assertTrue(trial.out().startsWith("roster.yaml, line 1"), trial.out());
    }

    @Test
    void sarif_names_files_from_where_the_caller_stands_or_from_the_school() throws IOException {
        SchoolFiles.sound(folder.resolve("my school")).with("riposte.yaml", SchoolFiles.withoutSafety());
        Trial above = Trial.run(folder, "check", "--format", "sarif", "my school");
        assertEquals(1, above.code());
        assertTrue(above.out().contains("\"uri\" : \"my%20school/riposte.yaml\""), above.out());
        assertTrue(above.out().contains("\"startLine\" : 13"), above.out());
        Trial within = Trial.run(folder.resolve("my school/feet"), "check", "--format", "sarif");
        assertTrue(within.out().contains("\"uri\" : \"riposte.yaml\""), within.out());
        assertTrue(within.out().contains("\"text\" : \"The folder of the school.\""), within.out());
    }

    @Test
    void chosen_drills_are_judged_alone() {
        SchoolFiles.sound(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        assertEquals(0, Trial.run(folder, "check", "straight", "feet").code());
        assertEquals(1, Trial.run(folder, "check", "riposte").code());
        assertEquals(
                1, Trial.run(folder.resolve("feet"), "check", "../riposte.yaml").code());
        assertEquals(
                1,
                Trial.run(
                                folder.getParent(),
                                "check",
                                folder.resolve("riposte.yaml").toString())
                        .code());
        assertEquals(
                1,
                Trial.run(folder.getParent(), "--school", folder.toString(), "check", "riposte")
                        .code());
    }

    @Test
    void settings_that_cannot_be_read_concern_every_drill() {
        SchoolFiles.sound(folder).with("school.yaml", "levls: []\n");
        Trial trial = Trial.run(folder, "check", "straight");
        assertEquals(1, trial.code());
        assertTrue(trial.out().startsWith("school.yaml, line 1, column 1: error (unknown-key)"), trial.out());
    }

    @Test
    void school_is_found_upward_and_just_below() {
        SchoolFiles.sound(folder.resolve("club"));
        assertTrue(Trial.run(folder.resolve("club/feet"), "check").out().startsWith("3 drills"));
        assertTrue(Trial.run(folder, "check").out().startsWith("3 drills"));
        assertTrue(Trial.run(folder.resolve("club"), "check", "feet").out().startsWith("1 drill"));
    }

    @Test
    void folder_without_drills_cannot_be_checked() {
        Trial trial = Trial.run(folder, "check");
        assertEquals(2, trial.code());
        assertEquals("", trial.out());
        assertTrue(trial.err().startsWith("There is no drill in "), trial.err());
    }

    @Test
    void unknown_name_has_its_nearest() {
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "check", "ripostes");
        assertEquals(2, trial.code());
        assertTrue(trial.err().endsWith("Did you mean 'riposte'?\n"), trial.err());
        assertEquals(1, trial.err().lines().count());
    }

    @Test
    void file_that_is_no_drill_is_refused() {
        SchoolFiles.sound(folder).with("notes.txt", "words");
        Trial trial = Trial.run(folder, "check", "notes.txt");
        assertEquals(2, trial.code());
        assertTrue(trial.err().contains("is not a drill"), trial.err());
    }

    @Test
    void rules_are_all_shown() {
        Trial trial = Trial.run(folder, "check", "--rules");
        assertEquals(0, trial.code());
        Rules.ids().forEach(id -> assertTrue(trial.out().contains("\n" + id + " ("), id));
        for (ReadingRule rule : ReadingRule.values()) {
            assertTrue(trial.out().contains("\n" + rule.id() + "\n"), rule.id());
        }
    }

    @Test
    void colour_is_for_terminals() {
        SchoolFiles.sound(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        assertTrue(Trial.inColour(folder, "check").out().contains("\u001B[1;31merror\u001B[0m"));
        assertFalse(Trial.run(folder, "check").out().contains("\u001B"));
    }

    @Test
    void progress_is_for_terminals_and_long_work() {
        SchoolFiles many = SchoolFiles.sound(folder);
        for (int at = 0; at < 240; at++) {
            many.with("more/steps-" + at + ".yaml", "title: x\n");
        }
        assertTrue(Trial.talk(folder, "", "check").out().contains("\rReading 200 of 243"));
        assertFalse(Trial.run(folder, "check").out().contains("\r"));
        assertFalse(Trial.talk(folder, "", "check", "feet").out().startsWith("Reading"));
    }
}
