package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.drillwright.print.Example;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The riposte has 3 counts of 2 s, 3 s back, is gone through once, without a change of roles: 9 s. */
class LessonCommandTest {

    @TempDir
    Path folder;

    @Test
    void times_are_those_worked_by_hand() {
        Trial trial = PlanFiles.of(folder, 1, 1).run("lesson", "tonight");
        assertEquals(0, trial.code(), trial.err());
        String text = trial.out().replaceAll(" +", " ");
        // 120 + 480 s, then 150 s of showing and 9 s, then 300 s: 1059 s of 5400 s.
        assertTrue(text.contains("17:39 of 90:00 minutes, 72:21 to spare. Practice: 0 % of the class."), text);
        assertTrue(text.contains("\n 10:00 Parry of quarte, straight riposte 2:39 1 time\n"), text);
        assertTrue(text.contains("2 cards of set thrusts, no. 1"), text);
    }

    @Test
    void the_cards_of_a_class_are_those_of_its_lesson() throws IOException {
        Trial trial = PlanFiles.of(folder, 1, 1).run("cards", "--class", "tonight", "--sheet", "card");
        assertEquals(0, trial.code(), trial.err());
        try (PDDocument document = Loader.loadPDF(folder.resolve("cards.pdf").toFile())) {
            assertEquals(1, document.getNumberOfPages());
            String text = new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
            assertTrue(text.contains("Parry of quarte, straight riposte"), text);
        }
        assertEquals(
                "Name a class or drills, not both.\n",
                Trial.run(folder, "cards", "--class", "tonight", "riposte").err());
    }

    @Test
    void what_must_be_there_and_does_not_fit_is_one() {
        Trial trial = PlanFiles.of(folder, 1, 1)
                .with(
                        "classes/tonight.yaml",
                        "date: 2026-08-26\nminutes: 16\ndrills: [riposte]\nsettings: {riposte: {must: yes}}\n")
                .run("lesson", "tonight");
        assertEquals(1, trial.code());
        assertTrue(trial.out().contains("1:39 too long"), trial.out());
    }

    @Test
    void the_sheet_has_calls_gear_and_cautions_and_nobodys_name() throws IOException {
        PlanFiles files = PlanFiles.of(folder, 2, 2);
        assertEquals(0, files.run("lesson", "tonight", "--out", "lesson.pdf").code());
        String text;
        try (PDDocument document = Loader.loadPDF(folder.resolve("lesson.pdf").toFile())) {
            text = new PDFTextStripper().getText(document);
        }
        text = text.replaceAll("\\s+", " ");
        assertTrue(text.contains("Gear mask, jacket, underarm protector, glove"), text);
        assertTrue(text.contains("Riposte straight to the high inside"), text);
        assertTrue(text.contains("1: Arrive softly and let the blade bend."), text);
        assertTrue(!text.contains("New0") && !text.contains("Old0"), text);
    }

    /** Four drills of three to five counts, as the design of the sheet measured them. */
    @Test
    void the_evening_of_the_example_is_one_page() throws IOException {
        Trial trial = Trial.run(Example.copyTo(folder), "lesson", "tonight", "--out", "lesson.pdf");
        assertTrue(trial.out().contains("Lesson of Wednesday 2026-12-02, 1 page."), trial.out() + trial.err());
    }

    @Test
    void a_sheet_is_called_in_its_schools_language() throws IOException {
        Path school = Example.copyTo(folder);
        Files.writeString(school.resolve("school.yaml"), "\nlanguage: de\n", StandardOpenOption.APPEND);
        Trial trial = Trial.run(school, "lesson", "tonight", "--out", "lesson.pdf");
        assertTrue(
                trial.out().contains("lesson.pdf: Stunde am Mittwoch, 2. Dezember 2026, 1 Seite."),
                trial.out() + trial.err());
    }

    @Test
    void json_has_the_same_times() {
        String json = PlanFiles.of(folder, 1, 1)
                .run("lesson", "tonight", "--format", "json")
                .out();
        assertTrue(json.contains("\"needed\" : 1059"), json);
        assertTrue(json.contains("\"practice\" : 9"), json);
    }

    /** The worked hall of 18 x 10 m holds six lanes; ten pairs work in two waves. */
    @Test
    void the_hall_is_counted_in() {
        PlanFiles files = PlanFiles.of(folder, 10, 10)
                .with(
                        "classes/tonight.yaml",
                        "date: 2026-08-26\ndrills: [riposte]\nrounds: 1\nhall: {length: 18, width: 10}\n");
        assertTrue(files.run("hall", "tonight").out().startsWith("6 lanes fit, 3 abreast along the hall: 12 people"));
        assertTrue(files.run("hall", "tonight", "--format", "json").out().contains("\"waves\" : 2"));
        // Two waves: 150 + 2 x 9 s.
        assertTrue(files.run("lesson", "tonight").out().replaceAll(" +", " ").contains("riposte 2:48"));
    }

    /** Eight, each with seven others: of everybody the nearest five, of one all. */
    @Test
    void of_many_partners_the_nearest_are_shown() {
        PlanFiles files = PlanFiles.of(folder, 1, 7);
        String all = files.run("partners").out();
        assertEquals(8, all.split("and 2 more; partners NAME lists them all", -1).length - 1, all);
        String one = files.run("partners", "Old0").out();
        assertEquals(6, one.split(" 2 drills for both", -1).length - 1, one);
        assertFalse(one.contains(" more;"), one);
    }

    @Test
    void two_who_train_get_a_sheet() {
        PlanFiles files = PlanFiles.of(folder, 1, 2);
        assertTrue(files.run("partners", "old0").out().contains("Old1: "));
        Trial session = files.run("session", "Old0", "Old1", "--minutes", "45", "--out", "two.pdf");
        assertEquals(0, session.code(), session.err());
        assertEquals(1, files.run("session", "Old0", "Old1", "--minutes", "5").code());
    }
}
