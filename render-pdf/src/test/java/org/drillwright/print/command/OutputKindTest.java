package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file holds what its name says and what was asked for, or is not written. */
class OutputKindTest {

    @TempDir
    Path folder;

    private PlanFiles school() {
        return PlanFiles.of(folder, 2, 2)
                .with("school.yaml", SchoolFiles.SETTINGS + "hall: {length: 18, width: 10}\n")
                .with("terms/autumn.yaml", "groups: []\n");
    }

    @ParameterizedTest
    @CsvSource({
        "progress --out x.csv, .pdf or .svg",
        "progress --format csv --out x.pdf, .csv",
        "pairs tonight --out x.json, .pdf or .svg",
        "pairs tonight --format json --out x.pdf, .json",
        "lesson tonight --out x.docx, .pdf or .svg",
        "lesson tonight --format json --out x.svg, .json",
        "hall tonight --format json --out x.csv, .json",
        "session Old0 Old1 --out x.ics, .pdf or .svg",
        "packet tonight --out x.html, .pdf or .svg",
        "cards --out x.csv, .pdf",
        "cards --out x.html, .pdf",
        "booklet --out x.txt, .pdf",
        "handout all --out x.json, .pdf",
        "term autumn --format json --out x.pdf, .json",
        "term autumn --out x.csv, .pdf or .svg"
    })
    void a_name_that_tells_of_another_kind_is_refused(String command, String endings) throws IOException {
        Trial trial = school().run(command.split(" "));
        assertEquals(2, trial.code(), trial.out() + trial.err());
        assertTrue(
                trial.err().contains("': end its name in " + endings + ".")
                        || trial.err().contains(": end its name in " + endings + "."),
                trial.err());
        try (var files = Files.list(folder)) {
            assertFalse(
                    files.anyMatch(file -> String.valueOf(file.getFileName()).startsWith("x.")));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "progress --format csv --out, t.csv, 'drill,level,'",
        "progress --format csv --out, t, 'drill,level,'",
        "pairs tonight --format json --out, t.json, {",
        "lesson tonight --format json --out, t.json, {",
        "hall tonight --format json --out, T.JSON, {",
        "progress --out, t.pdf, %PDF",
        "progress --out, t, %PDF",
        "progress --out, wall.2026-09, %PDF",
        "progress --out, t.svg, <svg"
    })
    void the_file_holds_what_was_asked_for(String command, String name, String beginning) throws IOException {
        PlanFiles files = school();
        String[] words = (command + " " + name).split(" ");
        for (int time = 0; time < 2; time++) {
            Trial trial = files.run(words);
            assertTrue(trial.code() < 2, trial.err());
            assertTrue(trial.out().contains(name), trial.out());
            String held = new String(Files.readAllBytes(folder.resolve(name)), StandardCharsets.ISO_8859_1);
            assertTrue(held.startsWith(beginning), held.substring(0, Math.min(40, held.length())));
        }
    }

    @Test
    void the_file_says_the_same_as_the_standard_output() throws IOException {
        PlanFiles files = school();
        files.run("progress", "--format", "csv", "--out", "t.csv");
        assertEquals(files.run("progress", "--format", "csv").out(), files.read("t.csv"));
        files.run("pairs", "tonight", "--format", "json", "--out", "t.json");
        assertEquals(files.run("pairs", "tonight", "--format", "json").out(), files.read("t.json"));
    }
}
