package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArgumentsTest {

    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "chek                    | There is no command 'chek'; did you mean 'check'?",
                "frobnicate              | There is no command 'frobnicate'.",
                "chek --help             | There is no command 'chek'; did you mean 'check'?",
                "--help chek             | There is no command 'chek'; did you mean 'check'?",
                "help chek               | There is no command 'chek'; did you mean 'check'?",
                "check -h --strickt      | There is no option '--strickt'; did you mean '--strict'?",
                "check --strickt         | There is no option '--strickt'; did you mean '--strict'?",
                "check --format xml      | 'xml' is not one of text, line, json, sarif",
                "check --format          | Missing required parameter",
                "cards --card a8         | 'a8' is not one of a7, 3x5, quarter-letter, 4x6, a6, 5x8,"
                        + " half-letter, a5, wall-a4, wall-a3",
                "cards --sheet b4        | 'b4' is not one of a4, a3, letter, legal, card",
                "cards --png 5           | Pictures have from 20 to 1200 dots per inch, not 5.",
                "cards --shift 9,0       | a shift is at most 5 mm either way",
                "cards --set x riposte   | Name a set or drills, not both.",
                "new                     | Missing required parameter: 'TITLE'",
                "school extra            | The command takes no 'extra'.",
                "check --school nowhere  | There is no folder 'nowhere'.",
                "--school nowhere check  | There is no folder 'nowhere'.",
                "check nowhere           | There is no file 'nowhere', and no drill of that name in ",
                "cards --set thrust      | The school has no set 'thrust'; did you mean 'thrusts'?",
                "cards --out feet        | is a folder; name a file in it.",
                "cards --out school.yaml | already exists and is not a PDF; it was left alone.",
                "new --level beginer x   | The school has no level 'beginer'; did you mean 'beginner'?",
                "watch --port 65536      | A port is a number from 0 to 65535, not 65536.",
                "watch --port any        | 'any' is not a whole number",
                "watch nowhere           | There is no file 'nowhere', and no drill of that name in ",
                "new ?!                  | A title needs a letter or a digit",
                "new Riposte             | There is already a drill 'riposte'"
            })
    void a_mistake_is_one_line_and_two(String arguments, String said) {
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, arguments.split(" "));
        assertEquals(2, trial.code());
        assertTrue(trial.err().contains(said), trial.err());
        assertEquals(1, trial.err().lines().count(), trial.err());
        assertEquals("", trial.out());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "check --help", "cards -h", "new --help", "school --help"})
    void help_names_the_exit_codes(String arguments) {
        Trial trial = Trial.run(folder, arguments.split(" "));
        assertEquals(0, trial.code());
        assertTrue(trial.out().contains("Usage: drillwright"), trial.out());
        assertTrue(trial.out().contains("could not run"), trial.out());
        assertEquals("", trial.err());
    }

    @Test
    void help_is_a_command_too() {
        assertEquals(
                Trial.run(folder, "cards", "--help").out(),
                Trial.run(folder, "help", "cards").out());
        assertEquals(
                Trial.run(folder, "--help").out(), Trial.run(folder, "help").out());
    }

    /** A name or an option that was changed goes on for one release, and no help shows it. */
    @Test
    void what_was_called_otherwise_still_works() {
        SchoolFiles.sound(folder);
        assertEquals(Trial.run(folder, "identify", "7K3M-P9RX"), Trial.run(folder, "mark", "7K3M-P9RX"));
        assertEquals(
                Trial.run(folder, "explain", "steps", "--format", "json"),
                Trial.run(folder, "explain", "steps", "--json"));
        assertEquals(Trial.run(folder, "coverage", "--format", "json"), Trial.run(folder, "coverage", "--json"));
        for (String help : List.of("--help", "help explain", "help coverage")) {
            String shown = Trial.run(folder, help.split(" ")).out();
            assertFalse(shown.contains("--json") || shown.contains("  mark "), shown);
        }
    }

    @Test
    void version_is_one_line() {
        Trial trial = Trial.run(folder, "--version");
        assertEquals(0, trial.code());
        assertTrue(trial.out().matches("drillwright .+\n"), trial.out());
    }

    @Test
    void without_a_command_a_pipe_gets_the_usage() {
        Trial trial = Trial.run(folder);
        assertEquals(2, trial.code());
        assertEquals("", trial.out());
        assertTrue(trial.err().contains("Usage: drillwright"), trial.err());
    }
}
