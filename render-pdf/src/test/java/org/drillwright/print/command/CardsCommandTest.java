package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CardsCommandTest {

    @TempDir
    Path folder;

    @Test
    void set_is_printed_in_teaching_order() throws IOException {
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "cards", "--set", "thrusts", "--sheet", "card", "--out", "new/thrusts.pdf");
        assertEquals(
                new Trial(0, "new/thrusts.pdf: 2 cards of size a6, one to a page. Print at 100 % (actual size).\n", ""),
                trial);
        try (PDDocument document =
                Loader.loadPDF(folder.resolve("new/thrusts.pdf").toFile())) {
            assertEquals(2, document.getNumberOfPages());
            assertTrue(text(document, 1).contains("Parry of quarte"));
            assertTrue(text(document, 2).contains("thrusts 2 of 2"), text(document, 2));
            assertEquals(
                    "Saltmarsh Hall (invented): thrusts",
                    document.getDocumentInformation().getTitle());
        }
    }

    @Test
    void whole_school_is_printed_set_after_set() throws IOException {
        SchoolFiles.sound(folder)
                .with(
                        "loose.yaml",
                        SchoolFiles.steps()
                                .replace("beginner", "intermediate")
                                .replace("Steps", "Jumps")
                                .replace("Advance", "Jump forward"));
        Trial trial = Trial.run(folder, "cards", "--sheet", "card");
        assertEquals(0, trial.code(), trial.out());
        try (PDDocument document = Loader.loadPDF(folder.resolve("cards.pdf").toFile())) {
            assertEquals(4, document.getNumberOfPages());
            assertTrue(text(document, 1).contains("Parry of quarte"));
            assertTrue(text(document, 2).contains("Straight thrust"));
            assertTrue(text(document, 3).contains("Steps by the call"));
            assertTrue(text(document, 4).contains("Jumps by the call"));
        }
    }

    @Test
    void cards_share_a_sheet() throws IOException {
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "cards", "--card", "4x6", "--sheet", "letter");
        assertTrue(trial.out().contains("3 cards of size 4x6, on 1 sheet of Letter"), trial.out());
        try (PDDocument document = Loader.loadPDF(folder.resolve("cards.pdf").toFile())) {
            PDRectangle page = document.getPage(0).getMediaBox();
            assertEquals(PDRectangle.LETTER.getWidth(), page.getWidth(), 0.01);
            assertEquals(PDRectangle.LETTER.getHeight(), page.getHeight(), 0.01);
        }
    }

    @Test
    void bookmarks_gather_the_drills_of_a_set() throws IOException {
        SchoolFiles.sound(folder);
        Trial.run(folder, "cards", "--back", "safety");
        try (PDDocument document = Loader.loadPDF(folder.resolve("cards.pdf").toFile())) {
            List<String> titles = new ArrayList<>();
            for (PDOutlineItem set :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(set.getTitle());
                set.children().forEach(drill -> titles.add("- " + drill.getTitle()));
            }
            assertEquals(
                    List.of(
                            "thrusts",
                            "- Parry of quarte, straight riposte",
                            "- Straight thrust with the lunge",
                            "feet",
                            "- Steps by the call"),
                    titles);
        }
    }

    /** A6 is 105 by 148 mm: at 254 dots an inch ten dots a millimetre. */
    @Test
    void pictures_are_named_by_drill_and_side() throws IOException {
        SchoolFiles.sound(folder);
        Trial trial =
                Trial.run(folder, "cards", "--set", "thrusts", "--png", "254", "--back", "pictures", "--out", "shown");
        assertEquals(new Trial(0, "shown: 4 pictures of cards of size a6, at 254 dots an inch.\n", ""), trial);
        assertEquals(
                List.of("riposte-back.png", "riposte.png", "straight-back.png", "straight.png"),
                names(folder.resolve("shown")));
        BufferedImage card = ImageIO.read(folder.resolve("shown/riposte.png").toFile());
        assertEquals(1050, card.getWidth(), 1.0);
        assertEquals(1480, card.getHeight(), 1.0);
    }

    @Test
    void picture_of_another_make_is_left_alone() throws IOException {
        SchoolFiles.sound(folder).with("cards/straight.png", "a letter");
        Trial trial = Trial.run(folder, "cards", "--png", "100", "straight");
        assertEquals(2, trial.code());
        assertTrue(trial.err().contains("straight.png' already exists and is not a PNG"), trial.err());
        assertEquals(List.of("straight.png"), names(folder.resolve("cards")));
        assertEquals("a letter", Files.readString(folder.resolve("cards/straight.png")));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void test_sheet_has_two_sides_of_the_paper() throws IOException {
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "cards", "--test-sheet", "--sheet", "legal", "--duplex", "short");
        assertEquals(0, trial.code(), trial.err());
        try (PDDocument document =
                Loader.loadPDF(folder.resolve("test-sheet.pdf").toFile())) {
            assertEquals(2, document.getNumberOfPages());
            assertEquals(
                    PDRectangle.LEGAL.getHeight(),
                    document.getPage(1).getMediaBox().getHeight(),
                    0.01);
        }
    }

    /** DejaVu Serif stands for a school's own font. */
    @Test
    void cards_are_set_in_the_schools_own_font() throws IOException {
        byte[] serif = font("DejaVuSerif.ttf");
        SchoolFiles.sound(folder).with("school.yaml", SchoolFiles.SETTINGS + "font: {regular: own.ttf}\n");
        Files.write(folder.resolve("own.ttf"), serif);
        Trial trial = Trial.run(folder, "cards");
        assertEquals(0, trial.code(), trial.err() + trial.out());
        try (PDDocument document = Loader.loadPDF(folder.resolve("cards.pdf").toFile())) {
            PDResources resources = document.getPage(0).getResources();
            for (COSName name : resources.getFontNames()) {
                String font = resources.getFont(name).getName();
                assertTrue(font.endsWith("+DejaVuSerif"), font);
            }
            assertTrue(text(document, 1).contains("Parry of quarte, straight riposte"));
        }
    }

    /** Bytes 8 and 9 of the table OS/2 are {@code fsType}; 2 is Restricted License embedding (OpenType specification). */
    @Test
    void fonts_that_cannot_be_used_are_refused_in_a_sentence() throws IOException {
        SchoolFiles.sound(folder).with("school.yaml", SchoolFiles.SETTINGS + "font: own.ttf\n");
        refusesFont("The font 'own.ttf' of school.yaml cannot be read: it is not there.");
        Files.writeString(folder.resolve("own.ttf"), "no font");
        refusesFont("The font 'own.ttf' of school.yaml cannot be used: it is not a TrueType font.");
        byte[] restricted = font("DejaVuSerif.ttf");
        ByteBuffer tables = ByteBuffer.wrap(restricted);
        for (int at = 12; at < 12 + 16 * tables.getShort(4); at += 16) {
            if (new String(restricted, at, 4, StandardCharsets.US_ASCII).equals("OS/2")) {
                tables.putShort(tables.getInt(at + 8) + 8, (short) 2);
            }
        }
        Files.write(folder.resolve("own.ttf"), restricted);
        refusesFont("The font 'own.ttf' of school.yaml cannot be used: its maker forbids that it is embedded in"
                + " documents.");
        SchoolFiles.sound(folder).with("school.yaml", SchoolFiles.SETTINGS + "font: ../own.ttf\n");
        Path outside = Files.write(folder.resolveSibling("own.ttf"), font("DejaVuSerif.ttf"));
        refusesFont("The font '../own.ttf' of school.yaml is not a file in the school's folder.");
        Files.delete(outside);
    }

    private void refusesFont(String sentence) {
        Trial trial = Trial.run(folder, "cards");
        assertEquals(new Trial(2, "", sentence + "\n"), trial);
    }

    private static byte[] font(String name) throws IOException {
        try (InputStream in =
                CardsCommandTest.class.getResourceAsStream("/net/sf/jasperreports/fonts/dejavu/" + name)) {
            return in.readAllBytes();
        }
    }

    @Test
    void drill_with_errors_is_refused_by_name() {
        SchoolFiles.sound(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        Trial trial = Trial.run(folder, "cards");
        assertEquals(1, trial.code());
        assertTrue(trial.out().startsWith("riposte.yaml, line 13, column 5: error (safety-note-missing)"), trial.out());
        assertTrue(trial.out().contains("\nNothing was printed, because of: riposte.\n"), trial.out());
        assertTrue(trial.out().contains("--draft"));
        assertFalse(Files.exists(folder.resolve("cards.pdf")));
        assertEquals(
                0, Trial.run(folder, "cards", "straight", "feet/steps.yaml").code());
    }

    @Test
    void draft_is_marked_on_the_cards_that_have_errors() throws IOException {
        SchoolFiles.sound(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        assertEquals(0, Trial.run(folder, "cards", "--draft", "--sheet", "card").code());
        try (PDDocument document = Loader.loadPDF(folder.resolve("cards.pdf").toFile())) {
            assertTrue(text(document, 1).contains("DRAFT"));
            assertFalse(text(document, 2).contains("DRAFT"));
            assertFalse(text(document, 3).contains("DRAFT"));
        }
    }

    @Test
    void foot_says_which_counts_were_not_judged() throws IOException {
        SchoolFiles.sound(folder)
                .with("riposte.yaml", SchoolFiles.riposte().replace("Parry quarte.", "Zwirbel the blade."));
        assertEquals(0, Trial.run(folder, "cards", "--draft", "--sheet", "card").code());
        try (PDDocument document = Loader.loadPDF(folder.resolve("cards.pdf").toFile())) {
            assertTrue(text(document, 1).contains("Not fully checked: count"), text(document, 1));
            assertFalse(text(document, 2).contains("Not fully checked"), text(document, 2));
        }
    }

    @Test
    void file_that_cannot_be_read_holds_up_its_set() throws IOException {
        SchoolFiles.sound(folder)
                .with("riposte.yaml", SchoolFiles.riposte().replace("Parry quarte.", "Parry: quarte: x"));
        Trial refused = Trial.run(folder, "cards", "--set", "thrusts");
        assertEquals(1, refused.code());
        assertTrue(refused.out().contains("error (broken-yaml)"), refused.out());
        assertFalse(Files.exists(folder.resolve("cards.pdf")));
        Trial draft = Trial.run(folder, "cards", "--set", "thrusts", "--draft");
        assertEquals(1, draft.code());
        assertTrue(draft.out().endsWith("Not printed: riposte.\n"), draft.out());
        assertTrue(Files.exists(folder.resolve("cards.pdf")));
    }

    @Test
    void file_that_cannot_be_read_may_belong_to_a_levels_set() {
        SchoolFiles.sound(folder).with("feet/lost.yaml", "title: [\n");
        Trial trial = Trial.run(folder, "cards", "--set", "feet");
        assertEquals(1, trial.code());
        assertTrue(trial.out().contains("because of: lost."), trial.out());
    }

    @Test
    void drill_that_a_set_only_names_is_missed() {
        SchoolFiles.sound(folder).with("school.yaml", SchoolFiles.SETTINGS.replace("straight", "straigth"));
        Trial trial = Trial.run(folder, "cards", "--set", "thrusts");
        assertEquals(1, trial.code());
        assertTrue(trial.out().contains("'straigth' is listed in a set"), trial.out());
    }

    @Test
    void character_that_the_typeface_lacks_is_found_before_printing() {
        SchoolFiles.sound(folder)
                .with("straight.yaml", SchoolFiles.straight().replace("Take the touch", "Take the touch 漢"));
        Trial trial = Trial.run(folder, "cards");
        assertEquals(1, trial.code());
        assertTrue(trial.out().startsWith("straight.yaml, line 10, column 30: error (unprintable)"), trial.out());
        assertTrue(trial.out().contains("U+6F22"), trial.out());
        assertFalse(Files.exists(folder.resolve("cards.pdf")));
    }

    /** Two drills with Syriac words, which the typeface lacks: that is said once, by check too. */
    @Test
    void words_of_scripts_that_the_typeface_lacks_are_refused_in_one_line() {
        SchoolFiles.sound(folder)
                .with("straight.yaml", SchoolFiles.straight().replace("Take the touch", "\u0723\u071D\u0726\u0710"))
                .with("again.yaml", SchoolFiles.straight().replace("Take the touch", "\u071D\u0726\u0710"));
        for (String command : List.of("cards", "check")) {
            Trial trial = Trial.run(folder, command);
            assertEquals(1, trial.code());
            assertEquals(2, trial.out().split("The cards' typeface lacks U", -1).length, trial.out());
            assertTrue(trial.out().contains("they stand in 2 drills."), trial.out());
        }
        assertFalse(Files.exists(folder.resolve("cards.pdf")));
    }

    @Test
    void settings_with_errors_print_nothing() {
        SchoolFiles.sound(folder).with("school.yaml", "card: a9\n");
        Trial trial = Trial.run(folder, "cards", "--draft");
        assertEquals(1, trial.code());
        assertTrue(trial.out().endsWith("correct the settings of the school first.\n"), trial.out());
    }

    @Test
    void same_drills_give_the_same_bytes_and_replace_the_old_file() throws IOException {
        SchoolFiles.sound(folder);
        Trial.run(folder, "cards");
        byte[] first = Files.readAllBytes(folder.resolve("cards.pdf"));
        Trial.run(folder, "cards");
        assertArrayEquals(first, Files.readAllBytes(folder.resolve("cards.pdf")));
        try (var files = Files.list(folder)) {
            assertEquals(5, files.count());
        }
    }

    @Test
    void place_that_cannot_be_written_is_told_in_one_line() {
        SchoolFiles.sound(folder);
        Trial trial = Trial.run(folder, "cards", "--out", "riposte.yaml/cards.pdf");
        assertEquals(2, trial.code());
        assertEquals(1, trial.err().lines().count());
        assertTrue(trial.err().contains("cannot be written"), trial.err());
    }

    private static String text(PDDocument document, int page) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(page);
        stripper.setEndPage(page);
        return stripper.getText(document).replaceAll("[\\s\u00A0]+", " ");
    }
}
