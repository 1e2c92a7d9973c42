package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandoutCommandTest {

    private static final Path SCHOOL = Path.of("..", "drills");

    @TempDir
    Path folder;

    private Path print(String... more) {
        Path file = folder.resolve("handout.pdf");
        String[] arguments = new String[more.length + 3];
        arguments[0] = "handout";
        arguments[1] = "--out";
        arguments[2] = file.toString();
        System.arraycopy(more, 0, arguments, 3, more.length);
        Trial trial = Trial.run(SCHOOL, arguments);
        assertEquals(0, trial.code(), trial.out() + trial.err());
        return file;
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document).replace('\u00A0', ' ');
    }

    /** 16 cards and the safety card are 17 cards of paper: 5 sheets of 4 to A4. */
    @Test
    void a_packet_is_cover_safety_card_cards_and_table() throws IOException {
        try (PDDocument document = Loader.loadPDF(print("intermediate").toFile())) {
            assertEquals(2 + 10 + 2, document.getNumberOfPages());
            String cover = text(document, 1);
            assertTrue(cover.contains("Larkspur Salle (an invented school)\nIntermediate"), cover);
            assertTrue(cover.contains("Drills: 16. Cards: 16, of size a6"), cover);
            assertTrue(cover.contains("3 Parry of quarte and straight riposte foil 2, beginner 13 "), cover);
            assertTrue(cover.contains("16 Sabre: feint to the head, cut to the flank sabre 15 "), cover);
            assertTrue(cover.contains("Reading a card"), cover);
            assertFalse(cover.contains("Revised"), cover);
            assertEquals("", text(document, 2).strip());
            assertTrue(text(document, 3).startsWith("Safety and conduct"), text(document, 3));
            assertTrue(text(document, 3).contains("Parry of quarte and straight"));
            assertTrue(text(document, 11).contains("Sabre: feint to the head"));
            assertTrue(text(document, 13).startsWith("Sign-off"), text(document, 13));
            assertTrue(text(document, 13).contains("Sabre: feint to the head, cut to"));
            assertTrue(text(document, 14).contains("How to read the pictures"), text(document, 14));
        }
    }

    @Test
    void the_revision_is_the_latest_that_a_drill_states() throws IOException {
        SchoolFiles.sound(folder)
                .with("riposte.yaml", SchoolFiles.riposte() + "revised: 2026-02-03\n")
                .with("straight.yaml", SchoolFiles.straight() + "revised: 2025-12-31\n");
        assertEquals(0, Trial.run(folder, "handout", "thrusts").code());
        try (PDDocument document = Loader.loadPDF(folder.resolve("handout.pdf").toFile())) {
            assertTrue(text(document, 1).contains("Revised 2026-02-03"), text(document, 1));
            assertFalse(text(document, 1).contains("2025"), text(document, 1));
        }
    }

    @Test
    void the_same_packet_has_the_same_bytes() throws IOException {
        byte[] first = Files.readAllBytes(print("training"));
        assertEquals(-1, Arrays.mismatch(first, Files.readAllBytes(print("training"))));
    }

    @Test
    void what_cannot_be_printed_is_said_in_one_line() {
        SchoolFiles.sound(folder);
        Trial unknown = Trial.run(folder, "handout", "thrust");
        assertEquals(2, unknown.code());
        assertEquals("The school has no set 'thrust'; did you mean 'thrusts'?\n", unknown.err());
        Trial large = Trial.run(folder, "handout", "thrusts", "--card", "wall-a3");
        assertEquals(2, large.code());
        assertEquals(
                "A card of size wall-a3 is larger than a sheet of a4: choose another --card or --sheet.\n",
                large.err());
        new SchoolFiles(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        assertEquals(1, Trial.run(folder, "handout", "thrusts").code());
        assertFalse(Files.exists(folder.resolve("handout.pdf")));
    }

    @Test
    void a_page_for_a_phone_is_one_file_written_whole_or_not_at_all() throws IOException {
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "handout", "thrusts", "--html");
        assertEquals(0, trial.code(), trial.err());
        assertTrue(
                trial.out()
                        .matches("handout.html: the safety card and 2 drills, one page of \\d+ kB\\."
                                + " Send it to the phone and open it there; it needs no network\\.\n"),
                trial.out());
        byte[] first = Files.readAllBytes(folder.resolve("handout.html"));
        assertEquals(0, Trial.run(folder, "handout", "thrusts", "--html").code());
        assertEquals(-1, Arrays.mismatch(first, Files.readAllBytes(folder.resolve("handout.html"))));
        new SchoolFiles(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        Trial faulty = Trial.run(folder, "handout", "thrusts", "--html");
        assertEquals(1, faulty.code());
        assertTrue(faulty.out().contains("Nothing was printed, because of: riposte."), faulty.out());
        assertEquals(-1, Arrays.mismatch(first, Files.readAllBytes(folder.resolve("handout.html"))));
        assertEquals(
                0, Trial.run(folder, "handout", "thrusts", "--html", "--draft").code());
        assertTrue(Files.readString(folder.resolve("handout.html")).contains("DRAFT"));
        try (var left = Files.list(folder)) {
            assertEquals(
                    0, left.filter(file -> file.toString().endsWith(".part")).count());
        }
    }

    @Test
    void a_page_of_somebody_else_is_left_alone() throws IOException {
        SchoolFiles.sound(folder).with("handout.html", "<!DOCTYPE html><html>mine</html>");
        Trial trial = Trial.run(folder, "handout", "thrusts", "--html");
        assertEquals(2, trial.code());
        assertTrue(
                trial.err().endsWith("already exists and is not a page of this program; it was left alone.\n"),
                trial.err());
        assertEquals("<!DOCTYPE html><html>mine</html>", Files.readString(folder.resolve("handout.html")));
    }

    @Test
    void what_is_for_paper_has_no_place_on_a_phone() {
        SchoolFiles.sound(folder);
        Trial card = Trial.run(folder, "handout", "thrusts", "--html", "--card", "a5");
        assertEquals(2, card.code());
        assertEquals("--card is for paper; leave out that option, or --html.\n", card.err());
        Trial pdf = Trial.run(folder, "handout", "thrusts", "--html", "--out", "x.pdf");
        assertEquals(2, pdf.code());
        assertEquals(
                "With --html the file name must end in .html, so that a phone knows what it is; 'x.pdf' does not.\n",
                pdf.err());
        assertFalse(Files.exists(folder.resolve("x.pdf")));
    }
}
