package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
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
        Trial trial = Trial.run(SCHOOL, "booklet", "--pages", "single", "--out", file.toString());
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
    void every_drill_has_its_page_and_the_contents_name_it() {
        Matcher row = Pattern.compile("(?m)^(\\d+) (.+?) (?:foil|épée|sabre|no weapon) (.{4}-.{4})$")
                .matcher(page(2));
        int rows = 0;
        while (row.find()) {
            rows++;
            String page = words(Integer.parseInt(row.group(1)));
            assertTrue(page.contains(row.group(2)) && page.contains(row.group(3)), row.group());
        }
        assertEquals(34, rows, page(2));
    }

    private static String words(int page) {
        return page(page).replaceAll("\\s+", " ");
    }

    @Test
    void a_page_says_where_the_way_comes_from_and_leads() {
        int at = IntStream.rangeClosed(1, PAGES.size())
                .filter(page -> words(page).contains(" Straight thrust with the lunge foil · in pairs"))
                .findFirst()
                .orElseThrow();
        Matcher needs = Pattern.compile(
                        "Needs (\\d+) Extend, then lunge, at a mark; (\\d+) Keeping distance with a partner\\. Leads to")
                .matcher(words(at));
        assertTrue(needs.find(), words(at));
        assertTrue(words(Integer.parseInt(needs.group(1))).contains(" Extend, then lunge, at a mark foil ·"));
        assertTrue(words(Integer.parseInt(needs.group(2))).contains(" Keeping distance with a partner foil ·"));
    }

    @Test
    void the_first_page_is_in_words_and_defers_to_rules_and_instructors() {
        assertTrue(words(1).startsWith("Larkspur Salle"), words(1));
        assertTrue(
                words(1).contains("The rules of your national federation, local codes and a qualified instructor"),
                words(1));
    }

    /** Each head is a word that one of its drills prints, whatever the program calls it inside. */
    @Test
    void the_index_names_words_that_its_pages_print() {
        int index = IntStream.rangeClosed(1, PAGES.size())
                .filter(page -> page(page).contains("\nTerms"))
                .findFirst()
                .orElseThrow();
        String terms = page(index).substring(page(index).indexOf("\nTerms"));
        Matcher row = Pattern.compile("(?m)^([a-z][a-z -]*) (\\d[\\d, \\n–]*)$").matcher(terms);
        int rows = 0;
        while (row.find()) {
            rows++;
            String word = row.group(1);
            assertTrue(
                    Pattern.compile("\\d+")
                            .matcher(row.group(2))
                            .results()
                            .map(page -> words(Integer.parseInt(page.group())).toLowerCase(Locale.ROOT))
                            .anyMatch(page -> page.contains(word)),
                    row.group());
        }
        assertTrue(rows > 25, terms);
    }

    /** A drill's title in the contents, wherever it is clicked, leads to the drill. */
    @Test
    void links_and_bookmarks_lead_to_their_drills() throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve("booklet.pdf").toFile())) {
            List<PDAnnotationLink> links = new ArrayList<>();
            for (PDAnnotation area : document.getPage(1).getAnnotations()) {
                if (area.getContents().matches("\\D.*")) {
                    links.add((PDAnnotationLink) area);
                }
            }
            assertEquals(34, links.size());
            for (PDAnnotationLink link : links) {
                int page = ((PDPageDestination) link.getDestination()).retrievePageNumber() + 1;
                assertTrue(words(page).contains(link.getContents()), link.getContents());
            }
            List<String> titles = new ArrayList<>();
            for (PDOutlineItem part :
                    document.getDocumentCatalog().getDocumentOutline().children()) {
                titles.add(part.getTitle());
                for (PDOutlineItem drill : part.children()) {
                    int page = ((PDPageDestination) drill.getDestination()).retrievePageNumber() + 1;
                    assertTrue(words(page).contains(drill.getTitle()), drill.getTitle());
                }
            }
            assertEquals(
                    List.of(
                            "Larkspur Salle (an invented school)",
                            "Contents",
                            "beginner",
                            "intermediate",
                            "training",
                            "What builds on what",
                            "Index",
                            "What the drills work on"),
                    titles);
        }
    }

    /** Folded, the outermost sheet holds the first page and the last; the tags go on from the first page to the second. */
    @Test
    void folded_sheets_hold_two_pages_and_are_read_in_their_order() throws IOException {
        Path file = folder.resolve("folded.pdf");
        Trial trial = Trial.run(SCHOOL, "booklet", "--out", file.toString());
        assertTrue(trial.out().contains("turned over the short edge"), trial.out());
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertEquals((PAGES.size() + 3) / 4 * 2, document.getNumberOfPages());
            List<Object> cards = ((PDStructureElement) document.getDocumentCatalog()
                            .getStructureTreeRoot()
                            .getKids()
                            .get(0))
                    .getKids();
            assertEquals(PAGES.size(), cards.size());
            List<Integer> sides = new ArrayList<>();
            for (Object card : cards.subList(0, 4)) {
                PDStructureElement page = (PDStructureElement)
                        ((PDStructureElement) card).getKids().get(0);
                sides.add(document.getPages().indexOf(page.getPage()));
            }
            assertEquals(List.of(0, 1, 2, 3), sides);
        }
    }

    @Test
    void the_same_booklet_has_the_same_bytes() throws IOException {
        Path again = folder.resolve("again.pdf");
        Trial.run(SCHOOL, "booklet", "--pages", "single", "--out", again.toString());
        assertEquals(-1, Arrays.mismatch(Files.readAllBytes(again), Files.readAllBytes(folder.resolve("booklet.pdf"))));
    }
}
