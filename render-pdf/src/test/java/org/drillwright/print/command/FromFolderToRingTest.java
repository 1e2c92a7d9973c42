package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

/**
 * One person's way from an empty folder to laminated cards on a ring, a class and a reprint: the commands of the README and
 * the guides, one after another in one folder. Each step is judged by what such a person sees: how the command ended, what
 * it said, what lies in the folder, and what stands on the paper.
 */
class FromFolderToRingTest {

    private static final String DRILL = "parry-of-quarte.yaml";

    /** Four marks, a hyphen, four marks, as the guide on handing out cards tells. */
    private static final Pattern MARK = Pattern.compile("\\b[3-9A-Z]{4}-[3-9A-Z]{4}\\b");

    private static final String PEOPLE = """
            people:
              - {name: Ada, level: intermediate, hand: right, skill: 50, knows: [beginner, parry-of-quarte]}
              - {name: Ben, level: intermediate, hand: right, skill: 50, knows: [beginner]}
              - {name: Cai, level: intermediate, hand: right, skill: 50, knows: [beginner, parry-of-quarte]}
              - {name: Dot, level: intermediate, hand: right, skill: 50, knows: [beginner]}
            """;

    private static final String CLASS = "date: 2026-09-01\nminutes: 60\nmode: learning\ndrills: [parry-of-quarte]\n";

    @TempDir
    static Path folder;

    private final List<DynamicTest> steps = new ArrayList<>();
    private String mark = "";

    private void step(String told, Executable done) {
        steps.add(dynamicTest((steps.size() + 1) + " " + told, done));
    }

    /** Runs a command and judges how it ended. */
    private static Trial ends(int code, String... command) {
        Trial trial = Trial.run(folder, command);
        assertEquals(code, trial.code(), () -> String.join(" ", command) + "\n" + trial.out() + trial.err());
        return trial;
    }

    private static void says(String words, Trial trial) {
        assertTrue(trial.out().contains(words), () -> trial.out() + trial.err());
    }

    private static boolean isThere(String file) {
        return Files.exists(folder.resolve(file));
    }

    private static String read(String file) throws IOException {
        return Files.readString(folder.resolve(file));
    }

    private static void rewrite(String file, String old, String now) throws IOException {
        String text = read(file);
        assertTrue(text.contains(old), text);
        Files.writeString(folder.resolve(file), text.replace(old, now));
    }

    private static void write(String file, String text) throws IOException {
        Path path = folder.resolve(file);
        Files.createDirectories(path.getParent() == null ? folder : path.getParent());
        Files.writeString(path, text);
    }

    /** What stands on the paper. */
    private static String paper(String file) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(file).toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private static int pages(String file) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(file).toFile())) {
            return document.getNumberOfPages();
        }
    }

    private static void shows(String words, String file) throws IOException {
        String paper = paper(file);
        assertTrue(paper.contains(words), paper);
    }

    /** The number of the line that holds these words, as an editor counts. */
    private static long line(String words) throws IOException {
        return read(DRILL).lines().takeWhile(line -> !line.contains(words)).count() + 1;
    }

    private static String markOn(String file) throws IOException {
        Matcher found = MARK.matcher(paper(file));
        assertTrue(found.find(), paper(file));
        return found.group();
    }

    @TestFactory
    Stream<DynamicTest> a_way() {
        writing();
        printing();
        teaching();
        return steps.stream();
    }

    private void writing() {
        step("an empty folder has nothing to check", () -> {
            Trial trial = ends(2, "check");
            assertTrue(trial.err().startsWith("There is no drill in "), trial.err());
        });
        step("a school is begun", () -> {
            ends(0, "begin", "Meadow Salle", "--sheet", "a4");
            assertTrue(read("school.yaml").contains("\nname: Meadow Salle\n"));
        });
        step("a school is begun once", () -> {
            String before = read("school.yaml");
            ends(2, "begin", "Another");
            assertEquals(before, read("school.yaml"));
        });
        step("a drill is begun", () -> {
            ends(0, "new", "Parry of quarte");
            assertTrue(read(DRILL).contains("\ntitle: Parry of quarte\n"));
        });
        step("it is complete as it stands", () -> says("1 drill: no errors", ends(0, "check")));
        step("a word is asked for", () -> says("Parez octave.", ends(0, "words", "parry of octave")));
        step("a mistake is found, in its line", () -> {
            rewrite(DRILL, "Parry quarte.", "Parry octave.");
            Trial trial = ends(1, "check");
            says(DRILL + ", line " + line("Parry octave.") + ", column 15: error", trial);
            says("Octave closes the low outside line, but the attack arrives in the high inside line.", trial);
        });
        step("an editor is told the same on one line", () -> {
            Trial trial = ends(1, "check", "--format", "line");
            says(DRILL + ":" + line("Parry octave.") + ":15: error", trial);
        });
        step("nothing is printed of a drill with an error", () -> {
            says("Nothing was printed", ends(1, "cards"));
            assertFalse(isThere("cards.pdf"));
        });
        step("but a draft, which says so", () -> {
            ends(0, "cards", "--draft", "--out", "draft.pdf");
            shows("DRAFT", "draft.pdf");
        });
        step("the phrase is told count by count", () -> says("octave", ends(0, "explain", "parry-of-quarte")));
        step("the mistake is mended", () -> {
            rewrite(DRILL, "Parry octave.", "Parry quarte.");
            says("1 drill: no errors", ends(0, "check", "--strict"));
        });
        step("the page beside the editor has an address", () -> {
            Trial trial = Trial.talk(folder, "\n", "watch", "parry-of-quarte", "--no-browser");
            assertTrue(trial.out().startsWith("http://127.0.0.1:"), trial.out());
        });
        step("there is nothing to tidy", () -> ends(0, "tidy", "--check"));
    }

    private void printing() {
        step("a test sheet shows how the printer meets front and back", () -> {
            ends(0, "cards", "--test-sheet");
            assertEquals(2, pages("test-sheet.pdf"));
        });
        step("cards for the pouch are printed, and written down", () -> {
            ends(0, "cards", "--changed", "--card", "a6", "--back", "pictures", "--laminate", "pouch");
            shows("Parry of quarte", "cards.pdf");
            shows("Meadow Salle", "cards.pdf");
            assertEquals(2, pages("cards.pdf"));
            assertTrue(read("prints.csv").contains("2026-09-01"));
        });
        step("the mark at a card's foot tells which it is", () -> {
            mark = markOn("cards.pdf");
            says("Parry of quarte (parry-of-quarte): this card is current.", ends(0, "identify", mark));
        });
        step("what is on the ring is not printed again", () -> says("Nothing to print", ends(0, "cards", "--changed")));
        step("an assistant's packet has a table to sign", () -> {
            ends(0, "handout", "intermediate");
            shows("Parry of quarte", "handout.pdf");
            shows(mark, "handout.pdf");
        });
        step("and a page for the phone", () -> {
            ends(0, "handout", "intermediate", "--html");
            assertTrue(read("handout.html").contains("Parry of quarte"));
        });
    }

    private void teaching() {
        step("people and a class are written", () -> {
            write("roster.yaml", PEOPLE);
            write("classes/tonight.yaml", CLASS);
            ends(0, "check");
        });
        step("the lesson fits", () -> {
            ends(0, "lesson", "tonight", "--out", "lesson.pdf");
            shows("Parry of quarte", "lesson.pdf");
        });
        step("the sheet for the wall names everybody", () -> {
            ends(0, "pairs", "tonight", "--out", "wall.pdf");
            for (String name : List.of("Ada", "Ben", "Cai", "Dot")) {
                shows(name, "wall.pdf");
            }
        });
        step("after class it is written down", () -> {
            ends(0, "record", "tonight", "--signed-off", "Ben", "parry-of-quarte");
            assertTrue(read("record.csv").contains("2026-09-01,Ada,,attended"), read("record.csv"));
            assertTrue(read("record.csv").contains("Ben,parry-of-quarte,signed off"), read("record.csv"));
        });
        step("who knows what is told", () -> says("Ben", ends(0, "progress")));
        step("a word is changed, and just that card is printed anew", () -> {
            rewrite(DRILL, "Arrive softly", "Arrive gently");
            Trial trial = ends(0, "cards", "--changed", "--back", "pictures", "--laminate", "pouch");
            says("Take the older cards off the rings", trial);
            says(mark, trial);
            shows("Arrive gently", "cards.pdf");
        });
        step("the older card is known as older", () -> says("Take it off the ring.", ends(0, "identify", mark)));
        step("the school is bound as a booklet", () -> {
            ends(0, "booklet");
            shows("Parry of quarte", "booklet.pdf");
        });
    }
}
