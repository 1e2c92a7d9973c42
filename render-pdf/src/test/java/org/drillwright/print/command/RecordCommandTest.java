package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RecordCommandTest {

    @TempDir
    Path folder;

    @Test
    void whatWasDoneIsAddedOnce() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 1, 1);
        assertEquals(
                "record.csv: 5 lines added.\n",
                files.run("record", "tonight", "--signed-off", "New0", "riposte")
                        .out());
        assertEquals("""
                date,person,drill,event,with
                2026-12-02,New0,,attended,
                2026-12-02,Old0,,attended,
                2026-12-02,New0,riposte,worked with,Old0
                2026-12-02,New0,riposte,signed off,
                """, files.read("record.csv"));
        assertEquals(
                "The record tells all of this already.\n",
                files.run("record", "tonight").out());
        assertTrue(files.run("progress", "--format", "csv").out().contains("\nriposte,intermediate,known,known\n"));
    }

    @Test
    void whatStandsThereStaysByteForByte() throws IOException {
        String torn = "date,person,drill,event,with\r\n2026-11-25,\"Old0\",,attended,\r\n2026-11-25,Ol";
        PlanFiles files = PlanFiles.of(folder, 1, 1).with("record.csv", torn);
        Trial trial = files.run("record", "tonight");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(trial.err().contains("record.csv, line 3"), trial.err());
        assertTrue(files.read("record.csv").startsWith(torn + "\n2026-12-02,"), files.read("record.csv"));
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals(
                    0, left.filter(file -> file.toString().endsWith(".part")).count());
        }
    }

    @Test
    void roundsNotWorkedAreNotRecorded() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 2, 2);
        assertEquals(0, files.run("record", "tonight", "--rounds", "0").code());
        assertEquals(
                4,
                files.read("record.csv")
                        .lines()
                        .filter(line -> line.contains("attended"))
                        .count());
        assertEquals(
                0,
                files.read("record.csv")
                        .lines()
                        .filter(line -> line.contains("worked"))
                        .count());
    }

    /** The line that the page of a handout writes. */
    @Test
    void drillsThatWereNotWorkedAreNotRecorded() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 1, 1);
        Trial other = files.run("record", "tonight", "--only", "nothing");
        assertEquals(2, other.code());
        assertTrue(other.err().startsWith("There is no drill 'nothing'"), other.err());
        assertEquals(0, files.run("record", "tonight", "--only", "riposte").code());
        assertTrue(files.read("record.csv").contains("riposte,worked with"), files.read("record.csv"));
    }

    @Test
    void aDryRunWritesNothing() {
        Trial trial = PlanFiles.of(folder, 1, 1).run("record", "tonight", "--dry-run");
        assertTrue(trial.out().startsWith("date,person,"), trial.out());
        assertTrue(Files.notExists(folder.resolve("record.csv")));
    }

    @Test
    void aCellThatASpreadsheetWouldRunIsEscaped() {
        PlanFiles files = PlanFiles.of(folder, 0, 0)
                .with("roster.yaml", "people:\n  - {name: '=1+1', knows: [riposte]}\n  - {name: Bo}\n");
        assertTrue(files.run("record", "tonight", "--dry-run").out().contains("\n2026-12-02,'=1+1,,attended,\n"));
        assertTrue(files.run("progress", "--format", "csv").out().startsWith("drill,level,'=1+1,Bo\n"));
    }
}
