package org.drillwright.school;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.plan.roster.OwnBlock;
import org.drillwright.plan.roster.Roster;
import org.drillwright.source.Finding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ClassFolderTest {

    @TempDir
    Path root;

    private ClassFolder open() throws IOException {
        return ClassFolder.open(SchoolFolder.open(root));
    }

    private void write(String name, String text) throws IOException {
        Path file = root.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    private static List<String> rules(List<Finding> findings) {
        return findings.stream().map(Finding::rule).toList();
    }

    @Test
    void people_and_classes_are_no_drills() throws IOException {
        write("school.yaml", "name: X\n");
        write("roster.yaml", "people: [{name: Ash}]\n");
        write("classes/tonight.yaml", "date: 2026-12-02\ndrills: []\n");
        write("record.csv", "date,person,drill,event,with\n");
        assertEquals(List.of(), SchoolFolder.open(root).entries());
        assertEquals(List.of("tonight"), open().names());
    }

    @Test
    void a_roster_is_one_only_beside_the_settings() throws IOException {
        write("feet/roster.yaml", "people: []\n");
        assertEquals(1, SchoolFolder.open(root).entries().size());
        assertEquals(Roster.EMPTY, open().roster().orElseThrow());
    }

    @Test
    void who_knows_a_set_knows_each_drill_of_it() throws IOException {
        write("school.yaml", "sets:\n  feet: {drills: [steps, lunge]}\n");
        write("steps.yaml", "title: Steps\n");
        write("lunge.yaml", "title: Lunge\n");
        write("roster.yaml", "people:\n  - {name: Ash, knows: [feet]}\n  - {name: Bo, knows: [lunge, swimming]}\n");
        ClassFolder classes = open();
        Roster roster = classes.roster().orElseThrow();
        assertEquals(
                Set.of("steps", "lunge"), roster.person("Ash").orElseThrow().knows());
        assertEquals(
                Set.of("lunge", "swimming"), roster.person("Bo").orElseThrow().knows());
        assertEquals(1, classes.findings().size(), classes.findings().toString());
    }

    @Test
    void of_two_rosters_one_is_read_and_the_other_named() throws IOException {
        write("roster.yaml", "people: [{name: Ash}]\n");
        write("roster.csv", "name\nBo\n");
        ClassFolder classes = open();
        assertEquals(List.of("Ash"), classes.roster().orElseThrow().names());
        assertEquals("roster.csv", classes.findings().get(0).file().name());
    }

    @Test
    void a_broken_roster_judges_no_class() throws IOException {
        write("roster.yaml", "people: [{name: Ash}, {name: Ash}]\n");
        write("classes/tonight.yaml", "date: 2026-12-02\ndrills: []\naway: [Ash]\n");
        ClassFolder classes = open();
        assertTrue(classes.roster().isEmpty());
        assertFalse(classes.findings().isEmpty());
        assertEquals(List.of(), classes.classFindings());
    }

    @Test
    void findings_of_classes_and_of_the_record_have_their_places() throws IOException {
        write("roster.yaml", "people: [{name: Ash}]\n");
        write("classes/tonight.yaml", "date: 2026-12-02\ndrills: []\naway: [Ahs]\n");
        write("record.csv", "date,person,drill,event,with\n2026-11-25,Ash,,attended,\n2026-11-25,As");
        ClassFolder classes = open();
        assertEquals(List.of("record-line-broken"), rules(classes.findings()));
        assertEquals(3, classes.findings().get(0).position().line());
        assertEquals(1, classes.history().entries().size());
        Finding unknown = classes.classFindings().get(0);
        assertEquals("classes/tonight.yaml", unknown.file().name());
        assertEquals(3, unknown.position().line());
    }

    @Test
    void a_class_takes_the_habits_of_the_school_where_it_says_nothing() throws IOException {
        write("school.yaml", "timing: {swap: 7, change: 44}\nhall: {length: 18, width: 10}\ninitials: yes\n");
        write("classes/one.yaml", "date: 2026-12-02\ndrills: []\ntiming: {change: 5}\nhall: {width: 9.99}\n");
        ClassFolder classes = open();
        ClassBrief brief =
                classes.read(classes.named("one").orElseThrow()).value().orElseThrow();
        assertEquals(7, brief.timing().swap().toSeconds());
        assertEquals(5, brief.timing().change().toSeconds());
        assertEquals(120, brief.timing().opening().toSeconds());
        assertEquals(1_800, brief.hall().orElseThrow().length());
        assertEquals(999, brief.hall().orElseThrow().width());
        assertTrue(SchoolFolder.open(root).habits().initials());
    }

    @Test
    void a_class_adds_to_the_blocks_of_the_school_and_changes_them_by_name() throws IOException {
        write("school.yaml", """
                blocks:
                  - {name: Rings, minutes: 5, place: warm-up, how: Ankles first.}
                  - {name: Glove tag, minutes: 6, place: spare}
                  - {name: Talk, minutes: 3, place: after}
                """);
        write("classes/one.yaml", """
                date: 2026-12-02
                drills: []
                blocks:
                  - {name: Talk, minutes: 0}
                  - {name: Masks, minutes: 2, place: before}
                  - {name: Rings, minutes: 9}
                """);
        ClassFolder classes = open();
        assertEquals(
                List.of(
                        new OwnBlock("Rings", Duration.ofMinutes(9), OwnBlock.Place.WARM_UP, "Ankles first."),
                        new OwnBlock("Glove tag", Duration.ofMinutes(6), OwnBlock.Place.SPARE, ""),
                        new OwnBlock("Masks", Duration.ofMinutes(2), OwnBlock.Place.BEFORE, "")),
                classes.read(classes.named("one").orElseThrow())
                        .value()
                        .orElseThrow()
                        .blocks());
    }

    @Test
    void a_block_needs_its_minutes_and_its_place() throws IOException {
        write("school.yaml", "blocks: [{name: Rings}, {minutes: 241, place: late, name: Talk}]\n");
        assertEquals(
                List.of(
                        "'minutes' is missing.",
                        "'place' is missing.",
                        "'minutes' needs a whole number from 0 to 240.",
                        "'late' is unknown here."),
                SchoolFolder.open(root).findings().stream()
                        .map(finding -> finding.what().english())
                        .limit(4)
                        .toList());
    }

    /** 3 and 10 April 2026 are Fridays; 17 April can be no month. Classes on other days say nothing of what is on record. */
    @Test
    void the_dates_of_the_record_say_themselves_how_they_are_written() throws IOException {
        String record =
                "date;person;drill;event;with\n03/04/2026;Ash Fenwick;;attended;\n10/04/2026;Ash Fenwick;;attended;\n";
        write("roster.csv", "Vorname;Nachname\nAsh;Fenwick\n");
        write("record.csv", record);
        for (String day : List.of("2026-04-03", "2026-03-04", "2026-10-04", "2026-09-04")) {
            write("classes/" + day + ".yaml", "date: " + day + "\ndrills: []\n");
            assertEquals(0, open().history().entries().size(), day);
        }
        write("record.csv", record + "17/04/2026;Ash Fenwick;;attended;\n");
        assertEquals(
                List.of(LocalDate.of(2026, 4, 17), LocalDate.of(2026, 4, 10), LocalDate.of(2026, 4, 3)),
                open().history().days());
        write("record.csv", record);
        write("school.yaml", "tables: {dates: month-first, columns: {name: Nachname}}\n");
        assertEquals(
                List.of(LocalDate.of(2026, 10, 4), LocalDate.of(2026, 3, 4)),
                open().history().days());
        assertEquals(List.of("Fenwick"), open().roster().orElseThrow().names());
    }
}
