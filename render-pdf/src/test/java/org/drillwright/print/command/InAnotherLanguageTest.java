package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSObjectKey;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cards, packets, pages and booklets in a language that their drills are not written in. */
class InAnotherLanguageTest {

    @TempDir
    Path folder;

    private SchoolFiles school;

    @BeforeEach
    void write() {
        school = SchoolFiles.sound(folder);
    }

    private Trial run(String... arguments) {
        Trial trial = Trial.run(folder, arguments);
        assertEquals(0, trial.code(), trial.out() + trial.err());
        return trial;
    }

    private String text(String name) throws IOException {
        try (PDDocument document = Loader.loadPDF(folder.resolve(name).toFile())) {
            return new PDFTextStripper()
                    .getText(document)
                    .replace('\u00A0', ' ')
                    .replaceAll("\\s+", " ");
        }
    }

    private Path translations() {
        return folder.resolve("translations").resolve("fr.yaml");
    }

    @Test
    void turns_are_said_and_free_words_stay_until_they_are_translated() throws IOException {
        Trial trial = run("cards", "riposte", "--in", "fr", "--out", "cards.pdf");
        String text = text("cards.pdf");
        assertTrue(text.contains("Parez quarte."), text);
        assertTrue(text.contains("Fait d’après l’anglais."), text);
        assertTrue(text.contains("intermédiaire") || text.contains("Intermédiaire"), text);
        assertTrue(text.contains("Parry of quarte, straight riposte"), text);
        assertTrue(text.contains("masque"), text);
        assertTrue(trial.out().contains("have no words in French yet"), trial.out());
        assertFalse(Files.exists(translations()));
    }

    @Test
    void what_is_missing_is_listed_on_request_and_used_when_it_is_filled() throws IOException {
        run("cards", "riposte", "--in", "fr", "--list-missing", "--out", "cards.pdf");
        String listed = Files.readString(translations());
        assertTrue(
                listed.contains("from: \"Parry of quarte, straight riposte\"")
                        || listed.contains("from: Parry of quarte, straight riposte"),
                listed);
        Files.writeString(
                translations(),
                listed.replaceFirst(
                        "(from: Parry of quarte, straight riposte\\R +to:)", "$1 Parade de quarte, riposte directe"));
        run("cards", "riposte", "--in", "fr", "--list-missing", "--out", "cards.pdf");
        assertTrue(text("cards.pdf").contains("Parade de quarte, riposte directe"), text("cards.pdf"));
        assertTrue(Files.readString(translations()).contains("to: Parade de quarte, riposte directe"));
        assertEquals(0, Trial.run(folder, "check").code());
    }

    @Test
    void a_file_with_an_error_prints_nothing() throws IOException {
        school.with("translations/fr.yaml", "texts:\n  - form: Lunge\n    to: Fente\n");
        Trial trial = Trial.run(folder, "cards", "riposte", "--in", "fr", "--out", "cards.pdf");
        assertEquals(2, trial.code(), trial.out());
        assertTrue(trial.out().contains("translations/fr.yaml, line 2"), trial.out());
        assertFalse(Files.exists(folder.resolve("cards.pdf")));
        assertEquals(1, Trial.run(folder, "check").code());
        assertEquals(1, Trial.run(folder, "check", "translations/fr.yaml").code());
    }

    @Test
    void what_stays_is_marked_as_of_its_language() throws IOException {
        school.with(
                "open.yaml",
                SchoolFiles.riposte().replace("Riposte straight to the high inside line.", "Riposte, or disengage."));
        Trial trial = run("cards", "open", "--draft", "--in", "de", "--out", "cards.pdf");
        assertTrue(
                trial.out().contains("1 of 9 turns stays as written, in English: open (count 2 follower)."),
                trial.out());
        Map<String, Integer> languages = new TreeMap<>();
        try (PDDocument document = Loader.loadPDF(folder.resolve("cards.pdf").toFile())) {
            assertEquals("de", document.getDocumentCatalog().getLanguage());
            for (COSObjectKey key : document.getDocument().getXrefTable().keySet()) {
                if (document.getDocument().getObjectFromPool(key).getObject() instanceof COSDictionary part
                        && Objects.equals(part.getNameAsString("S"), "Span")
                        && part.getString("Lang") != null) {
                    languages.merge(part.getString("Lang"), 1, Integer::sum);
                }
            }
        }
        // The title in front and on the back of the card's second side, the turn, and three notes of safety.
        assertEquals(java.util.Set.of("en"), languages.keySet());
        assertTrue(languages.get("en") >= 4, languages::toString);
    }

    @Test
    void the_page_for_a_phone_marks_what_stays() throws IOException {
        run("handout", "thrusts", "--html", "--in", "it", "--out", "page.html");
        String page = Files.readString(folder.resolve("page.html"));
        assertTrue(page.contains("lang=\"it\""), page.substring(0, 400));
        assertTrue(page.contains("Para quarta."));
        assertTrue(page.contains("<span lang=\"en\" dir=\"ltr\">Stop the point on the jacket.</span>"));
        assertTrue(page.contains("Tratto dall’inglese."));
    }

    @Test
    void packet_and_booklet_are_in_the_language_too() throws IOException {
        run("handout", "thrusts", "--in", "es", "--out", "packet.pdf");
        assertTrue(text("packet.pdf").contains("Pare cuarta."), text("packet.pdf"));
        run("booklet", "--in", "es", "--out", "book.pdf");
        assertTrue(text("book.pdf").contains("Pare cuarta."), text("book.pdf"));
        assertTrue(text("book.pdf").contains("Traducido del inglés."), text("book.pdf"));
    }

    /** The mark is not that of the English card, and both are known. */
    @Test
    void identify_knows_the_card() throws IOException {
        run("cards", "riposte", "--out", "en.pdf");
        run("cards", "riposte", "--in", "fr", "--out", "fr.pdf");
        String english = mark(text("en.pdf"));
        String french = mark(text("fr.pdf"));
        assertFalse(english.equals(french));
        assertTrue(run("identify", english).out().contains("this card is current"));
        assertTrue(run("identify", french).out().contains("(riposte), in French: this card is current."));
    }

    private static String mark(String text) {
        Matcher mark = Pattern.compile("\\b[3-9A-Z]{4}-[3-9A-Z]{4}\\b").matcher(text);
        assertTrue(mark.find(), text);
        return mark.group();
    }

    @Test
    void options_that_do_not_go_together_are_refused() {
        Trial alone = Trial.run(folder, "cards", "--list-missing");
        assertEquals(2, alone.code());
        assertTrue(alone.err().contains("--list-missing goes with --in."), alone.err());
        assertEquals(2, Trial.run(folder, "cards", "--in", "xx").code());
    }

    /** In its own language a drill is printed as it is. */
    @Test
    void in_its_own_language_nothing_is_made_anew() throws IOException {
        run("cards", "riposte", "--out", "one.pdf");
        run("cards", "riposte", "--in", "en", "--out", "other.pdf");
        assertEquals(text("one.pdf"), text("other.pdf"));
    }
}
