package org.drillwright.print.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Trial;
import org.drillwright.print.faults.Started;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Names of files, and words within them, that a terminal would obey (ECMA-48: ESC, and the C1 controls). */
@DisabledOnOs(value = OS.WINDOWS, disabledReason = "Windows has no such names")
class NamesTest {

    private static final String EVIL = "a\u001B[31m\nforged.yaml: error\u009B2J\u202Efdp.yaml";

    @TempDir
    Path folder;

    private static void assertHarmless(String text) {
        assertFalse(text.codePoints().anyMatch(point -> point == 0x1B || point == 0x9B || point == 0x07), text);
        assertFalse(text.matches("(?s).*[\\u202A-\\u202E\\u2066-\\u2069\\u200E\\u200F\\u061C].*"), text);
        assertFalse(text.lines().anyMatch(line -> line.startsWith("forged")), text);
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "tidy", "cards --draft --out=c.pdf", "coverage"})
    void a_file_name_steers_no_terminal_and_forges_no_line(String command) throws Exception {
        SchoolFiles.sound(folder).with("broken.yaml", "titel: x\n");
        Files.writeString(folder.resolve(EVIL), "titel: \"\\e[31m\"\n\"\\e[2J\": 1\n");
        Started run = Started.run(folder, command.split(" "));
        assertHarmless(run.out());
        assertHarmless(run.err());
        assertTrue(run.code() < 2 || run.isOneSentence(), run.err());
    }

    /** The marks of Unicode Annex 9, section 2; a drill without a fault whose name stands in what is advised. */
    @Test
    void a_file_name_turns_no_text() throws Exception {
        SchoolFiles.sound(folder);
        String marks = "\u202A\u202E\u2066\u2069\u200E\u200F\u061C";
        for (int mark = 0; mark < marks.length(); mark++) {
            Files.writeString(folder.resolve("twin" + marks.charAt(mark) + ".yaml"), SchoolFiles.riposte());
        }
        for (String command : List.of("check", "check " + folder.resolve("no" + marks), "coverage")) {
            Started run = Started.run(folder, command.split(" "));
            assertHarmless(run.out());
            assertHarmless(run.err());
        }
    }

    /** JSON may hold anything, written as its standard wants (RFC 8259, section 7). */
    @Test
    void json_names_the_file_exactly() throws IOException {
        Files.writeString(folder.resolve("a\u001B\n\"b.yaml"), "titel: x\n");
        Trial trial = Trial.run(folder, "check", "--format", "json");
        assertTrue(trial.out().contains("\"a\\u001B\\n\\\"b.yaml\""), trial.out());
    }

    @Test
    void words_of_a_roster_a_class_and_a_record_steer_no_terminal() {
        String escape = "\\e[2J";
        School school = School.in(folder)
                .with("roster.yaml", "people:\n  - {name: A, knows: [\"" + escape + "\"]}\n\"\\e[3m\": 1\n");
        assertHarmless(school.run("pairs", "tonight").err());
        school = School.in(folder)
                .with("classes/tonight.yaml", "date: \"" + escape + "\"\nminutes: 90\ndrills: [\"" + escape + "\"]\n");
        assertHarmless(school.run("pairs", "tonight").err());
        school = School.in(folder)
                .with("record.csv", "date,person,drill,event,with\n\u001B[31m,\u001B]0;x\u0007,\u202Ex,z\u009B2J,\n");
        assertHarmless(school.run("progress").err());
    }

    @Test
    void arguments_steer_no_terminal() throws Exception {
        SchoolFiles.sound(folder);
        for (List<String> arguments : List.of(List.of("check", "\u001B[2J"), List.of("--\u001B[2J"))) {
            Started run = Started.run(folder, arguments.toArray(String[]::new));
            assertEquals(2, run.code());
            assertTrue(run.isOneSentence(), run.err());
            assertHarmless(run.err());
        }
    }

    @Test
    void a_name_like_an_option_is_reached_by_its_path() {
        School school = School.in(folder).with("-x.yaml", SchoolFiles.straight());
        Trial refused = school.run("check", "-x.yaml");
        assertEquals(2, refused.code());
        assertTrue(
                refused.err().startsWith("'-x.yaml' looks like an option; if it is a file, write './-x.yaml'."),
                refused.err());
        assertTrue(school.run("check", "./-x.yaml").out().contains("\n1 drill: "));
        assertTrue(school.run("check", "--", "-x.yaml").out().contains("\n1 drill: "));
    }

    @Test
    void the_longest_name_that_a_system_keeps_can_be_written() throws IOException {
        String longest = "n".repeat(250) + ".yaml";
        School school = School.in(folder).with(longest, "# Ours.\n" + SchoolFiles.straight());
        assertEquals(0, school.run("tidy", "--write", longest).code());
        assertTrue(Files.readString(folder.resolve(longest)).startsWith("# Ours."));
        Trial trial = school.run("cards", "riposte", "--out", "n".repeat(300) + ".pdf");
        assertEquals(2, trial.code());
        assertTrue(trial.err().endsWith("its name is too long.\n"), trial.err());
    }
}
