package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RecordCommandTest {

    @TempDir
    Path folder;

    private PlanFiles printed(int fresh, int knowing) {
        PlanFiles files = PlanFiles.of(folder, fresh, knowing);
        assertEquals(0, files.run("pairs", "tonight", "--keep").code());
        return files;
    }

    private static String mark(Trial kept) {
        return kept.out().replaceFirst("(?s).*?([1-9A-Z]{4}-[1-9A-Z]).*", "$1");
    }

    @Test
    void what_was_printed_is_added_once() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 1, 1);
        String mark = mark(files.run("pairs", "tonight", "--keep"));
        assertEquals(
                "record.csv: 4 lines added, as " + mark + " was printed.\n",
                files.run("record", "tonight", "--signed-off", "New0", "riposte")
                        .out());
        String bare = files.read("record.csv").replaceAll("(batch|done) [0-9a-f]{8}", "$1 x");
        assertEquals("""
                date,person,drill,event,with
                2026-08-26,,tonight,batch x 4,MARK
                2026-08-26,New0,,attended,
                2026-08-26,Old0,,attended,
                2026-08-26,New0,riposte,worked with,Old0
                2026-08-26,New0,riposte,signed off,
                2026-08-26,,tonight,done x,MARK
                """.replace("MARK", mark), bare);
        assertEquals(
                "The record already says all of this.\n",
                files.run("record", "tonight").out());
        assertTrue(files.run("progress", "--format", "csv").out().contains("\nriposte,intermediate,known,known\n"));
        assertEquals(
                "record.csv: 3 lines taken back.\n",
                files.run("record", "tonight", "--take-back").out());
    }

    @Test
    void what_stands_there_stays_byte_for_byte() throws IOException {
        String torn = "date,person,drill,event,with\r\n2026-08-19,\"Old0\",,attended,\r\n2026-08-19,Ol";
        PlanFiles files = printed(1, 1).with("record.csv", torn);
        Trial trial = files.run("record", "tonight");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(trial.err().contains("record.csv, line 3"), trial.err());
        assertTrue(files.read("record.csv").startsWith(torn + "\n2026-08-26,"), files.read("record.csv"));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(
                    0, left.filter(file -> file.toString().endsWith(".part")).count());
        }
    }

    /** Four people, two rounds: four were there, and each of the two who are new works with each of the two others. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "                                        | 8 lines added, as MARK was printed.",
                "--rounds 1                              | 6 lines added, as MARK was printed, with what you said.",
                "--rounds 0                              | 4 lines added, as MARK was printed, with what you said.",
                "--from-round 2 --without Old0           | 7 lines added, as MARK was printed, with what you said.",
                "--without Old0                          | 5 lines added, as MARK was printed, with what you said.",
                "--without Old0 --from-round 2 --without New0 --from-round 2 --without New1 | 4 lines added, as MARK was printed, with what you said.",
                "--from-round 2 --without Old0 --from-round 2 --without Old1 --from-round 2 --without New0 | 6 lines added, as MARK was printed, with what you said.",
                "--without Old0 --instead instructor --without Old1 --instead instructor | 4 lines added, as MARK was printed, with what you said.",
                "--skipped 1                             | 6 lines added, as MARK was printed, with what you said.",
                "--from-round 1 --without Old0 --from-round 2 --with Old0 | 7 lines added, as MARK was printed, with what you said.",
                "--without Old0 --instead instructor     | 7 lines added, as MARK was printed, with what you said.",
                "--without Old0 --instead Old1           | 5 lines added, as MARK was printed, with what you said.",
                "--from-round 2 --without Old0 --instead Old1 | 7 lines added, as MARK was printed, with what you said.",
                "--only riposte                          | 8 lines added, as MARK was printed, with what you said.",
                "--swap 2 New0 New1                      | 8 lines added, as MARK was printed, with what you said.",
                "--plan none                             | 8 lines added, as it would be planned now."
            })
    void what_really_happened_is_said(String said, String told) {
        PlanFiles files = PlanFiles.of(folder, 2, 2);
        String mark = mark(files.run("pairs", "tonight", "--keep"));
        String[] words =
                ("record tonight " + (said == null ? "" : said)).strip().split(" +");
        assertEquals(
                "record.csv: " + told.replace("MARK", mark) + "\n",
                files.run(words).out());
        assertEquals("The record already says all of this.\n", files.run(words).out());
    }

    @Test
    void what_was_printed_holds_whatever_becomes_of_the_roster() throws IOException {
        PlanFiles files = printed(2, 2);
        String before = files.run("record", "tonight", "--dry-run").out();
        String roster = files.read("roster.yaml");
        files.with("roster.yaml", roster.replace("straight, riposte", "straight"));
        assertEquals(before, files.run("record", "tonight", "--dry-run").out());
        files.with("roster.yaml", roster.replace("Old1", "Gone"));
        Trial gone = files.run("record", "tonight");
        assertEquals(2, gone.code());
        assertTrue(gone.err().startsWith("Old1 of "), gone.err());
        assertTrue(gone.err().contains(" isn't on the roster now."), gone.err());
        assertTrue(Files.notExists(folder.resolve("record.csv")));
    }

    /** Four people, two rounds of two pairs. */
    @Test
    void a_sign_off_the_day_after_leaves_what_was_corrected() throws IOException {
        PlanFiles files = printed(2, 2);
        files.run("record", "tonight", "--skipped", "2");
        String corrected = files.read("record.csv");
        assertEquals(
                "record.csv: 1 line added.\n",
                files.run("record", "tonight", "--signed-off", "New0", "riposte")
                        .out());
        assertTrue(files.read("record.csv").startsWith(corrected));
        Trial anew = files.run("record", "tonight");
        assertTrue(anew.out().startsWith("record.csv: 2 lines added, as "), anew.out());
        assertTrue(
                anew.out()
                        .endsWith(" Of what was said of this class before, only what this command repeats still"
                                + " counts.\n"),
                anew.out());
    }

    @Test
    void a_changed_copy_is_recorded_as_one() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 2, 2);
        String mark = mark(files.run("pairs", "tonight", "--keep"));
        String kept = files.read("classes/plans/2026-08-26-" + mark + ".yaml");
        files.with("copy.yaml", kept.replaceFirst("(?s)  - drill: riposte.*?(?=  - drill)", ""));
        assertEquals(
                "record.csv: 6 lines added, as the changed copy of " + mark + " has it.\n",
                files.run("record", "tonight", "--as", "copy.yaml").out());
        files.with("copy.yaml", kept.replace("[New0, Old0]", "[New0, Old1]"));
        Trial twice = files.run("record", "tonight", "--as", "copy.yaml");
        assertEquals(2, twice.code());
        assertTrue(twice.err().startsWith("Old1 stands twice in round "), twice.err());
        files.with("copy.yaml", kept.replace("class: tonight", "class: morning"));
        assertEquals(2, files.run("record", "tonight", "--as", "copy.yaml").code());
    }

    @Test
    void a_plan_changed_in_its_place_is_not_taken_for_what_was_printed() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 2, 2);
        String name = "classes/plans/2026-08-26-" + mark(files.run("pairs", "tonight", "--keep")) + ".yaml";
        files.with(name, files.read(name).replace("[New0, Old0]", "[New0, Old1]"));
        Trial trial = files.run("record", "tonight");
        assertEquals(1, trial.code());
        assertTrue(trial.err().contains("somebody has changed it"), trial.err());
        assertTrue(Files.notExists(folder.resolve("record.csv")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "record tonight | No plan of tonight for 2026-08-26 was printed, so it isn't known who worked"
                        + " with whom.",
                "record tonight --plan K7QM-J | No plan K7QM-J of tonight was printed here; for 2026-08-26 none was.",
                "record tonight --plan K7QM-K | 'K7QM-K' is not the mark of a plan: one of its signs is wrong, or two",
                "record tonight --date 2026-09-02 | 2026-09-02 is still to come; today is 2026-09-01. Nothing"
                        + " was recorded.",
                "record tonight --as nothing.yaml | There is no file 'nothing.yaml'.",
                "record tonight --plan none --as x | Give --plan or --as, not both.",
                "record tonight --plan none --swap 9 New0 Old0 | --swap needs the number of a round first, from 1 to 2",
                "record tonight --plan none --instead New0 | --instead needs the person replaced before it",
                "record tonight --plan none --without New0 --instead New0 | --instead needs somebody other than New0.",
                "record tonight --plan none --from-round x --without New0 | --from-round needs the number of a round, not 'x'.",
                "record tonight --plan none --without --dry-run | Missing required parameter for option '--without' (NAME)",
                "record tonight --plan none --without | Missing required parameter for option '--without' (NAME)",
                "record tonight --plan none --skipped 3 | --skipped needs a round from 1 to 2.",
                "record tonight --plan none --from-round 2 --with New0 | New0 has a place in round 1 too."
                        + " If New0 came only then: --without New0 --from-round 2 --with New0.",
                "record tonight --plan none --from-round 9 --without New0 | --from-round needs a round from 1 to 2."
            })
    void what_cannot_be_recorded_is_one_line(String arguments, String said) {
        Trial trial = PlanFiles.of(folder, 2, 2).run(arguments.split(" "));
        assertEquals(2, trial.code(), trial.out());
        assertTrue(trial.err().startsWith(said), trial.err());
        assertEquals(1, trial.err().lines().count(), trial.err());
        assertTrue(Files.notExists(folder.resolve("record.csv")));
    }

    /** The line that the page of a handout writes. */
    @Test
    void drills_that_were_not_worked_are_not_recorded() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 1, 1);
        Trial other = files.run("record", "tonight", "--plan", "none", "--only", "nothing");
        assertEquals(2, other.code());
        assertTrue(other.err().startsWith("There is no drill 'nothing'"), other.err());
        assertEquals(
                0,
                files.run("record", "tonight", "--plan", "none", "--only", "riposte")
                        .code());
        assertTrue(files.read("record.csv").contains("riposte,worked with"), files.read("record.csv"));
    }

    @Test
    void a_dry_run_writes_nothing() {
        Trial trial = PlanFiles.of(folder, 1, 1).run("record", "tonight", "--plan", "none", "--dry-run");
        assertTrue(trial.out().startsWith("date,person,"), trial.out());
        assertTrue(Files.notExists(folder.resolve("record.csv")));
    }

    @Test
    void a_cell_that_a_spreadsheet_would_run_is_escaped() {
        PlanFiles files = PlanFiles.of(folder, 0, 0)
                .with("roster.yaml", "people:\n  - {name: '=1+1', knows: [riposte]}\n  - {name: Bo}\n");
        assertTrue(files.run("record", "tonight", "--plan", "none", "--dry-run")
                .out()
                .contains("\n2026-08-26,'=1+1,,attended,\n"));
        assertTrue(files.run("progress", "--format", "csv").out().startsWith("drill,level,'=1+1,Bo\n"));
    }

    @Test
    void to_a_record_that_is_not_utf8_nothing_is_added() throws IOException {
        PlanFiles files = printed(1, 1);
        byte[] saved = "date;person;drill;event;with\r\n2026-08-19;Zoé;;attended;\r\n"
                .getBytes(Charset.forName("windows-1252"));
        Files.write(folder.resolve("record.csv"), saved);
        Trial trial = files.run("record", "tonight");
        assertEquals(2, trial.code());
        assertTrue(
                trial.err()
                        .contains("Nothing was recorded: record.csv is Windows-1252. Save it again as CSV UTF-8;"
                                + " its contents are kept."),
                trial.err());
        assertArrayEquals(saved, Files.readAllBytes(folder.resolve("record.csv")));
    }
}
