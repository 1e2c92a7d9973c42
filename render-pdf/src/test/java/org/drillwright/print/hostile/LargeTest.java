package org.drillwright.print.hostile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Trial;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files and folders that are too large. The bounds stand in core/docs/bounds.md. */
class LargeTest {

    private static final String HEAD = "date,person,drill,event,with\n";

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"drill.yaml", "school.yaml", "roster.yaml", "classes/tonight.yaml"})
    void ten_megabytes_are_refused_in_a_sentence(String file) {
        School school = School.in(folder).with(file, "title: " + "x".repeat(10_000_000));
        assertTrue(school.saidOf(file).contains("This file is larger than 256 KiB."));
    }

    @Test
    void a_hundred_thousand_counts_are_too_large_a_file_and_ten_thousand_too_long_a_list() {
        School school = School.in(folder).with("drill.yaml", "steps:\n" + "  - {}\n".repeat(100_000));
        assertTrue(school.saidOf("drill.yaml").contains("larger than 256 KiB"));
        school.with("drill.yaml", "steps:\n" + "  - {}\n".repeat(10_000));
        assertTrue(school.saidOf("drill.yaml").contains("This list has 10000 items; at most 200 are allowed."));
    }

    @Test
    void of_twenty_thousand_keys_nobody_knows_five_hundred_are_told() {
        String keys =
                IntStream.range(0, 20_000).mapToObj(at -> "k" + at + ": 1\n").collect(Collectors.joining());
        Trial trial = School.in(folder).with("drill.yaml", keys).run("check", "--format", "line", "drill.yaml");
        assertEquals(1, trial.code());
        assertEquals(
                501,
                trial.out()
                        .lines()
                        .filter(line -> line.startsWith("drill.yaml:"))
                        .count());
        // 20,000 unknown keys and the five that every drill needs, less the 500 that are told.
        assertTrue(trial.out().contains("There are more like this in the file: 19505 not shown."), trial.out());
    }

    /** The words are compared with all that are known, to say which was meant. */
    @Test
    void a_hundred_counts_of_words_that_nobody_knows_are_read() {
        String steps = ("  - leader: " + "zzz thrust ".repeat(36) + "\n").repeat(100);
        School school =
                School.in(folder).with("drill.yaml", SchoolFiles.riposte().replace("steps:\n", "steps:\n" + steps));
        assertEquals(1, school.run("check", "drill.yaml").code());
    }

    @Test
    void a_title_of_a_quarter_of_a_megabyte_is_one_finding() {
        String text = SchoolFiles.riposte().replace("Parry of quarte, straight riposte", "x".repeat(250_000));
        Trial trial = School.in(folder).with("drill.yaml", text).run("check", "--format", "line", "drill.yaml");
        assertTrue(trial.out().contains("(text-empty-or-too-long)"), trial.out());
        assertTrue(trial.out().length() < 2_000, "so much: " + trial.out().length());
    }

    @Test
    void a_record_of_thirty_thousand_strangers_is_read_and_five_hundred_are_told() {
        String lines = IntStream.range(0, 30_000)
                .mapToObj(at -> "2026-09-01,Stranger" + at + ",,attended,\n")
                .collect(Collectors.joining());
        Trial trial = School.in(folder).with("record.csv", HEAD + lines).run("progress");
        assertEquals(0, trial.code());
        assertTrue(trial.err().contains("There are more like this in the file: 29500 not shown."));
    }

    @Test
    void a_record_of_more_than_32_megabytes_is_left_alone() throws IOException {
        School school = School.in(folder).with("record.csv", HEAD + "x".repeat(33 * 1024 * 1024));
        Trial trial = school.run("record", "tonight", "--plan", "none");
        assertEquals(1, trial.code());
        assertTrue(trial.err().contains("This record is larger than 32 MiB. None of it was read."), trial.err());
        assertEquals(HEAD.length() + 33 * 1024 * 1024, Files.size(folder.resolve("record.csv")));
    }

    @Test
    void a_line_of_a_record_that_is_too_long_costs_that_line_only() {
        School school = School.in(folder)
                .with(
                        "record.csv",
                        HEAD + "2026-09-01," + "x".repeat(1_000_000)
                                + ",,attended,\n2026-09-01,New0,riposte,signed off,\n");
        Trial trial = school.run("progress", "--format", "csv");
        assertTrue(trial.err().contains("This line has more than 2000 characters."), trial.err());
        assertTrue(trial.out().contains("riposte,intermediate,known,known"), trial.out());
    }

    /** Whoever stands in the wrong folder, such as the whole of a disk, is told so soon. */
    @Test
    void ten_thousand_and_one_drills_are_too_many() throws IOException {
        fill(10_001);
        Trial trial = School.in(folder).run("check");
        assertEquals(2, trial.code());
        assertTrue(
                trial.err()
                        .endsWith(
                                "it contains more than 10000 drill files, so it is probably not the folder you mean.\n"),
                trial.err());
        assertEquals(1, trial.err().lines().count());
    }

    @Test
    @Tag("deep")
    void a_hundred_thousand_drills_are_too_many_as_soon() throws IOException {
        fill(100_000);
        assertEquals(2, School.in(folder).run("check").code());
    }

    @Test
    @Tag("deep")
    void nine_thousand_drills_are_judged() throws IOException {
        School school = School.in(folder);
        for (int at = 0; at < 9_000; at++) {
            school.with("many/d" + at + ".yaml", SchoolFiles.straight().replace("lunge\n", "lunge " + at + "\n"));
        }
        assertTrue(school.run("check", "--format", "line").code() < 2);
    }

    private void fill(int number) throws IOException {
        Path many = Files.createDirectories(folder.resolve("many"));
        for (int at = 0; at < number; at++) {
            Files.createFile(many.resolve("d" + at + ".yaml"));
        }
    }
}
