package org.drillwright.print.faults;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.drillwright.print.command.PlanFiles;
import org.drillwright.print.command.SchoolFiles;
import org.drillwright.print.command.Trial;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The disk is full, or may not be written to: every command that writes says so in a sentence, and no file changes. */
class DiskTest {

    /** Every command that writes into the folder it stands in, with what it writes. */
    private static final List<String> WRITING = List.of(
            "cards straight --out cards.pdf",
            "cards straight --changed --out cards.pdf",
            "cards straight --png 100 --out pictures",
            "cards --test-sheet --out sheet.pdf",
            "handout thrusts --out handout.pdf",
            "booklet --draft --out booklet.pdf",
            "pairs tonight --out pairs.pdf",
            "lesson tonight --out lesson.pdf",
            "hall tonight --out hall.pdf",
            "progress --out progress.pdf",
            "session New0 Old0 --out session.pdf",
            "packet tonight --out packet.pdf",
            "term autumn --date 2026-08-25 --out term.pdf",
            "term autumn --date 2026-08-25 --out term.svg",
            "term autumn --date 2026-08-25 --publish",
            "term spring --date 2026-08-25 --calendar spring.ics",
            "roster --rename New0 Newt",
            "roster --left New0",
            "session New0 Old0 --tell agreed",
            "session New0 Old0 --worked",
            "schema --out drill.json",
            "new Another",
            "record tonight --plan none",
            "tidy --write untidy",
            "check --fix --write x-mendable");

    private static final String TERM = """
            title: A term
            begins: "19:00"
            dates:
              - {key: a, date: 2026-09-02}
              - {key: b, date: 2026-09-09}
            groups:
              - {name: all, drills: [riposte]}
            """;

    /** Bytes that a disk in memory hands out at once; on most machines. */
    private static final int PAGE = 4096;

    @TempDir
    Path temporary;

    private static Path school(Path disk) throws IOException {
        Path folder = Files.createDirectories(disk.resolve("school"));
        PlanFiles.of(folder, 1, 1)
                .with("record.csv", record())
                .with("prints.csv", "date,mark,drill,size\n")
                .with("untidy.yaml", "# Ours.\n" + SchoolFiles.straight().replace("thrust with", "thrust and"))
                .with(
                        "x-mendable.yaml",
                        SchoolFiles.riposte()
                                .replace("straight riposte", "riposte")
                                .replace("    distance: extension\n", ""));
        new SchoolFiles(folder)
                .with(
                        "classes/tonight.yaml",
                        "date: 2026-08-26\nminutes: 90\ndrills: [riposte]\nhall: {length: 18, width: 10}\n");
        for (String file : List.of(
                "cards.pdf",
                "handout.pdf",
                "booklet.pdf",
                "pairs.pdf",
                "lesson.pdf",
                "hall.pdf",
                "progress.pdf",
                "session.pdf",
                "packet.pdf",
                "term.pdf",
                "sheet.pdf")) {
            Files.writeString(folder.resolve(file), "%PDF-1.7 the old one");
        }
        for (String term : List.of("autumn", "spring")) {
            new SchoolFiles(folder).with("terms/" + term + ".yaml", TERM);
        }
        Trial published = Trial.run(folder, "term", "spring", "--date", "2026-08-25", "--publish");
        assertEquals(0, published.code(), published.err());
        return folder;
    }

    /** A record that ends just before a page of the disk does, so that what is added needs another one. */
    private static String record() {
        String head = "date,person,drill,event,with\n2026-09-01,New0,,attended,\n";
        String line = "2026-09-01,%s,,attended,\n";
        int room = PAGE - 6 - head.length();
        int lines = 4;
        String last = line.formatted("x".repeat(room / lines + room % lines - line.length() + 2));
        return head
                + line.formatted("x".repeat(room / lines - line.length() + 2)).repeat(lines - 1)
                + last;
    }

    /** @param cause how the sentence ends */
    private static void assertNothingHappens(Path folder, String cause) throws IOException {
        Folder before = Folder.of(folder);
        for (String command : WRITING) {
            Trial trial = Trial.run(folder, command.split(" "));
            String last = trial.err().lines().reduce("", (one, other) -> other);
            assertEquals(2, trial.code(), command + trial);
            assertTrue(last.endsWith(": " + cause + "."), command + ": " + trial);
            assertTrue(last.contains(folder.toString()), command + " names no file: " + last);
            assertEquals(before, Folder.of(folder), command + " changed or left a file");
        }
    }

    @Test
    void a_full_disk_costs_a_sentence() throws Exception {
        try (FullDisk disk = FullDisk.at(temporary.resolve("disk"))) {
            Path folder = school(temporary.resolve("disk"));
            assertEquals(PAGE - 6, Files.size(folder.resolve("record.csv")));
            disk.fill();
            assertNothingHappens(folder, "the disk is full");
            disk.empty();
            assertEquals(
                    0, Trial.run(folder, "record", "tonight", "--plan", "none").code());
            assertEquals(0, Trial.run(folder, "tidy", "--write", "untidy").code());
        }
    }

    @Test
    void a_sealed_disk_costs_a_sentence() throws Exception {
        try (FullDisk disk = FullDisk.at(temporary.resolve("disk"))) {
            Path folder = school(temporary.resolve("disk"));
            disk.seal();
            assertNothingHappens(folder, "nothing can be written to this disk");
        }
    }

    @Test
    void a_record_that_is_a_folder_is_said_to_be_one() throws IOException {
        Path folder = school(temporary);
        Files.delete(folder.resolve("record.csv"));
        Files.createDirectory(folder.resolve("record.csv"));
        Trial trial = Trial.run(folder, "record", "tonight", "--plan", "none");
        assertEquals(1, trial.code());
        assertTrue(trial.err().contains("This is not a file that can be read: it is a folder"), trial.err());
    }
}
