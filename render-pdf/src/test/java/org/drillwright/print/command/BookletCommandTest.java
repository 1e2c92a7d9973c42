package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The example school as a booklet. */
class BookletCommandTest {

    private static final Path SCHOOL = Path.of("..", "drills");

    @TempDir
    static Path folder;

    private static final List<String> PAGES = new ArrayList<>();

    @BeforeAll
    static void print() throws IOException {
        Path file = folder.resolve("booklet.pdf");
        Trial trial = Trial.run(SCHOOL, "booklet", "--out", file.toString());
        assertEquals(0, trial.code(), trial.out() + trial.err());
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            for (int page = 1; page <= document.getNumberOfPages(); page++) {
                PDFTextStripper stripper = new PDFTextStripper();
                stripper.setStartPage(page);
                stripper.setEndPage(page);
                PAGES.add(stripper.getText(document).replace('\u00A0', ' '));
            }
        }
    }

    private static String page(int number) {
        return PAGES.get(number - 1);
    }

    @Test
    void everyDrillHasItsPageAndTheContentsNameIt() {
        Matcher row = Pattern.compile("(?m) (\\d+) (.{4}-.{4})$").matcher(page(2));
        int rows = 0;
        while (row.find()) {
            rows++;
            assertTrue(page(Integer.parseInt(row.group(1))).contains(row.group(2)), row.group());
        }
        assertEquals(34, rows, page(2));
    }

    @Test
    void aPageSaysWhereTheWayComesFromAndLeads() {
        String page = PAGES.stream()
                .filter(text -> text.startsWith("Straight thrust with the lunge"))
                .findFirst()
                .orElseThrow();
        String words = page.replaceAll("\\s+", " ");
        Matcher needs = Pattern.compile(
                        "Needs Extend, then lunge, at a mark \\((\\d+)\\); Keeping distance with a partner \\((\\d+)\\)")
                .matcher(words);
        assertTrue(needs.find(), words);
        assertTrue(page(Integer.parseInt(needs.group(1))).startsWith("Extend, then lunge, at a mark"));
        assertTrue(page(Integer.parseInt(needs.group(2))).startsWith("Keeping distance with a partner"));
        assertTrue(words.contains("Leads to Parry of quarte and straight riposte ("), words);
    }

    /** In the drill files the word stands in this one drill and in no other. */
    @Test
    void theIndexLeadsToThePagesThatSayAWord() {
        String index = String.join("\n", PAGES.subList(PAGES.size() - 3, PAGES.size()));
        Matcher row = Pattern.compile("(?m)^beat (\\d+)$").matcher(index);
        assertTrue(row.find(), index);
        assertTrue(page(Integer.parseInt(row.group(1))).startsWith("Beat and thrust"), index);
    }

    @Test
    void theMapIsToldInWords() throws IOException {
        byte[] bytes = Files.readAllBytes(folder.resolve("booklet.pdf"));
        try (PDDocument document = Loader.loadPDF(bytes)) {
            List<String> alternatives = document.getDocument().getXrefTable().keySet().stream()
                    .map(key -> document.getDocument().getObjectFromPool(key).getObject())
                    .filter(COSDictionary.class::isInstance)
                    .map(object -> ((COSDictionary) object).getString("Alt"))
                    .filter(Objects::nonNull)
                    .filter(alternative -> alternative.startsWith("The drills and what they need."))
                    .toList();
            assertEquals(1, alternatives.size());
            assertTrue(
                    alternatives.get(0).contains(" 16 Straight thrust with the lunge: needs 8, 15. "),
                    alternatives.get(0));
        }
    }

    @Test
    void theSameBookletHasTheSameBytes() throws IOException {
        Path again = folder.resolve("again.pdf");
        Trial.run(SCHOOL, "booklet", "--out", again.toString());
        assertEquals(-1, Arrays.mismatch(Files.readAllBytes(again), Files.readAllBytes(folder.resolve("booklet.pdf"))));
    }

    @Test
    void aWallSheetHasNoPlaceInABook() {
        Trial trial = Trial.run(SCHOOL, "booklet", "--card", "wall-a4");
        assertEquals(2, trial.code());
        assertEquals(1, trial.err().lines().count());
    }
}
