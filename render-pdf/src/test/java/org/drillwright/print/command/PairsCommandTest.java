package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PairsCommandTest {

    @TempDir
    Path folder;

    private String pdf(String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(name).toFile())) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void six_and_six_walk_in_two_lines() {
        Trial trial = PlanFiles.of(folder, 6, 6).run("pairs", "tonight");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(trial.out().startsWith("Wednesday 2026-08-26, learning: 12 people, 1 drill, 6 rounds"), trial.out());
        assertTrue(
                trial.out().contains("Line A stays, from post 1 onwards: New0, New1, New2, New3, New4, New5."),
                trial.out());
        assertTrue(
                trial.out()
                        .contains(
                                "one forming   nobody changes lines       nobody meets again   --walk 1  (the usual)"),
                trial.out());
        assertTrue(trial.out().endsWith("Proved best.\n\nNot printed yet.\n"), trial.out());
        assertEquals("", trial.err());
    }

    /** What is printed is kept with its lines, whichever way was asked for; and told to programs, too. */
    @Test
    void how_people_change_over_is_chosen() {
        PlanFiles files = PlanFiles.of(folder, 6, 6);
        Trial free = files.run("pairs", "tonight", "--walk", "free");
        assertTrue(free.out().contains("At each change everyone reads the sheet."), free.out());
        assertFalse(free.out().contains("Line A stays"), free.out());
        String json = files.run("pairs", "tonight", "--walk", "1", "--format", "json")
                .out()
                .replaceAll("\\s+", "");
        assertTrue(json.contains("\"formings\":[{\"from\":1,\"to\":6,\"stays\":[\"New0\","), json);
        assertTrue(json.contains("\"choices\":[{\"formings\":1,\"ask\":\"1\",\"usual\":true,\"changeLine\":0,"), json);
        assertEquals(2, files.run("pairs", "tonight", "--walk", "3").code());
        Trial kept = files.run("pairs", "tonight", "--keep");
        String mark = kept.out().replaceAll("(?s)Kept as (\\S+)\\..*", "$1");
        String again = files.run("pairs", "tonight", "--plan", mark).out();
        assertTrue(again.contains("Line A stays, from post 1 onwards: New0"), again);
    }

    /** The worked case of the issue: 9 new, 4 who know it. */
    @Test
    void what_cannot_be_is_said_in_numbers_and_is_one() {
        Trial trial = PlanFiles.of(folder, 9, 4).run("pairs", "tonight");
        assertEquals(1, trial.code());
        String text = trial.out().replaceAll("\\s+", " ");
        assertTrue(text.contains("9 are new to this drill and 4 know it: at most 4 safe pairs; 5 remain."), text);
        assertFalse(text.contains("(both new)"), text);
        assertEquals(
                1,
                new PlanFiles(folder)
                        .run("pairs", "tonight", "--out", "wall.pdf")
                        .code());
        assertTrue(Files.exists(folder.resolve("wall.pdf")));
    }

    @ParameterizedTest
    @CsvSource({"0, 1, 0", "1, 0, 0", "1, 1, 0", "2, 0, 0", "0, 3, 0", "100, 100, 0"})
    void any_number_of_people_is_planned(int fresh, int knowing, int code) {
        PlanFiles files = PlanFiles.of(folder, fresh, knowing);
        Trial trial = files.run("pairs", "tonight");
        assertEquals(code, trial.code(), trial.out() + trial.err());
        assertEquals("", trial.err());
        assertEquals(trial, files.run("pairs", "tonight"));
    }

    /** Twenty-four who walk as a ring for 14 rounds, all new to the one drill, which is named once: they fit on one sheet. */
    @Test
    void a_class_new_to_everything_has_one_sheet() throws IOException {
        Trial trial = PlanFiles.of(folder, 24, 0)
                .with(
                        "classes/tonight.yaml",
                        "date: 2026-08-26\nminutes: 90\ndrills: [riposte]\nsettings: {riposte: {rounds: 14}}\n")
                .run("pairs", "tonight", "--out", "wall.pdf");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(trial.out().contains(", 1 page."), trial.out());
        String text = pdf("wall.pdf").replaceAll("\\s+", " ");
        assertTrue(text.contains(" New to all: pairs of two new by choice, 12 pairs under one pair of eyes."), text);
    }

    @Test
    void a_class_to_which_nobody_comes_is_not_planned() {
        assertEquals(
                "Nobody comes to tonight: there is nobody on the roster.\n",
                PlanFiles.of(folder, 0, 0).run("pairs", "tonight").err());
        PlanFiles files = PlanFiles.of(folder, 1, 1)
                .with("classes/tonight.yaml", "date: 2026-08-26\ndrills: [riposte]\naway: [New0, Old0]\n");
        Trial trial = files.run("pairs", "tonight", "--out", "wall.pdf");
        assertEquals(2, trial.code());
        assertEquals(
                "Nobody comes to tonight: everybody on the roster is away or has left. See 'away' in the class and on"
                        + " the roster.\n",
                trial.err());
        assertTrue(Files.notExists(folder.resolve("wall.pdf")));
    }

    @Test
    void late_arrivals_change_only_what_is_left() {
        PlanFiles files = PlanFiles.of(folder, 6, 6);
        String before = files.run("pairs", "tonight").out();
        Trial late = files.run(
                "pairs",
                "tonight",
                "--from-round",
                "3",
                "--without",
                "new0",
                "--without",
                "Old0",
                "--from-round",
                "5",
                "--with",
                "Old0");
        assertEquals(0, late.code(), late.err());
        String played = before.substring(before.indexOf("Round 1"), before.indexOf("\n\nRound 3"));
        for (String line : played.split("\n")) {
            assertTrue(late.out().contains(line), line);
        }
        String middle =
                late.out().substring(late.out().indexOf("Round 3"), late.out().indexOf("Round 5"));
        assertFalse(middle.contains("New0") || middle.contains("Old0"), middle);
        String end =
                late.out().substring(late.out().indexOf("Round 5"), late.out().indexOf("To know"));
        assertTrue(end.contains("Old0") && !end.contains("New0"), end);
    }

    /** Each change holds from its own round on, however many there are. */
    @Test
    void three_changes_are_three() {
        PlanFiles files = PlanFiles.of(folder, 6, 6);
        String[] said =
                "pairs tonight --from-round 2 --without Old0 --from-round 3 --without Old1 --from-round 4 --without Old2"
                        .split(" ");
        String[] rounds = files.run(said).out().split("(?m)^Round \\d+: ");
        for (int round = 1; round <= 5; round++) {
            for (int gone = 0; gone < 3; gone++) {
                boolean there = round < 2 + gone;
                String groups = rounds[round].replaceAll("(?s)\n\n.*", "");
                assertEquals(there, groups.contains("Old" + gone), "Old" + gone + " in round " + round + ": " + groups);
            }
        }
    }

    @Test
    void why_names_the_reason() {
        PlanFiles files = PlanFiles.of(folder, 6, 6);
        assertEquals(
                "Both are new to riposte, so neither could help the other.\n",
                files.run("pairs", "tonight", "--why", "New0", "New1").out());
    }

    @Test
    void the_wall_has_every_name_or_initials_only() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 3, 3).with("roster.yaml", """
                people:
                  - {name: Ann Oak, knows: [straight, riposte]}
                  - {name: Ben Elm, knows: [straight]}
                """);
        assertEquals(0, files.run("pairs", "tonight", "--out", "wall.pdf").code());
        assertTrue(pdf("wall.pdf").contains("Ann Oak") && pdf("wall.pdf").contains("Ben Elm"), pdf("wall.pdf"));
        assertEquals(
                0,
                files.run("pairs", "tonight", "--out", "wall.pdf", "--initials").code());
        assertTrue(pdf("wall.pdf").contains("AO") && pdf("wall.pdf").contains("BE"), pdf("wall.pdf"));
        assertFalse(pdf("wall.pdf").contains("Oak"));
        files.with("school.yaml", SchoolFiles.SETTINGS + "initials: yes\n");
        assertEquals(0, files.run("pairs", "tonight", "--out", "wall.pdf").code());
        assertFalse(pdf("wall.pdf").contains("Oak"));
    }

    /** Six rounds: by name one sheet, by round several; the slips say with whom and where. */
    @Test
    void the_wall_is_printed_by_name_or_by_round_and_as_slips() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 4, 8);
        assertEquals(0, files.run("pairs", "tonight", "--out", "wall.pdf").code());
        assertTrue(pdf("wall.pdf").contains("Find your name: the number is your place."), pdf("wall.pdf"));
        assertTrue(pdf("wall.pdf").contains("Plan "), pdf("wall.pdf"));
        Trial round = files.run("pairs", "tonight", "--by", "round", "--out", "round.pdf");
        assertEquals(0, round.code(), round.err());
        assertTrue(pdf("round.pdf").contains("Round 1 of "), pdf("round.pdf"));
        Trial slips = files.run("pairs", "tonight", "--slips", "--out", "slips.pdf");
        assertEquals(0, slips.code(), slips.err());
        assertTrue(pdf("slips.pdf").contains("you lead first"), pdf("slips.pdf"));
        assertTrue(pdf("slips.pdf").contains("Plan "), pdf("slips.pdf"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pairs tonigh | There is no class 'tonigh' in the folder classes of the school; did you mean"
                        + " 'tonight'?",
                "pairs tonight --from-round 3 --without Nwe0 | There is nobody called 'Nwe0' on the roster; did"
                        + " you mean",
                "pairs tonight --from-round 99 --without New0 | There is no round 99: the class has 6.",
                "pairs tonight --from-round 0 --without New0 | --from-round needs a round from 1 on.",
                "pairs tonight --slips | --slips needs a PDF to write into: --out FILE.",
                "pairs tonight --by round | --by needs a PDF to write into: --out FILE.",
                "pairs tonight --by round --slips --out x.pdf | --by is for the wall, --slips for people's hands",
                "pairs tonight --without New0 | --without needs the round before it: --from-round N --without NAME.",
                "pairs tonight --why New Old0 | 'New' is the beginning of more than one name",
                "pairs tonight --out school.yaml | already exists and is not a PDF; it was left alone.",
                "session New0 New0 | A session needs two people.",
                "hall tonight | The class has no hall",
                "record tonight --plan none --rounds 7 | --rounds needs a number from 0 to 6.",
                "record tonight --plan none --signed-off New0 ripost | There is no drill 'ripost'; did you mean"
                        + " 'riposte'?"
            })
    void a_mistake_is_one_line_and_two(String arguments, String said) {
        Trial trial = PlanFiles.of(folder, 6, 6).run(arguments.split(" "));
        assertEquals(2, trial.code(), trial.out());
        assertTrue(trial.err().contains(said), trial.err());
        assertEquals(1, trial.err().lines().count(), trial.err());
    }

    @Test
    void a_drill_with_errors_is_not_planned() {
        Trial trial = PlanFiles.of(folder, 1, 1)
                .with("riposte.yaml", SchoolFiles.withoutSafety())
                .run("pairs", "tonight");
        assertEquals(1, trial.code());
        assertTrue(trial.err().contains("error (safety-note-missing)"), trial.err());
        assertEquals("", trial.out());
    }

    @Test
    void check_reads_people_classes_and_record() {
        PlanFiles files = PlanFiles.of(folder, 1, 1)
                .with("classes/tonight.yaml", "date: 2026-08-26\ndrills: [ripost]\n")
                .with("record.csv", "date,person,drill,event,with\n2026-08-19,Nobody,,attended,\n");
        Trial trial = files.run("check", "--format", "line");
        assertEquals(1, trial.code());
        assertTrue(trial.out().contains("classes/tonight.yaml:2:10: error"), trial.out());
        assertTrue(trial.out().contains("record.csv:2:12: warning"), trial.out());
    }
}
