package org.drillwright.print.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A season with a ring of cards: print, change a word, print again, look up what is in the hand. */
class ReprintTest {

    @TempDir
    Path folder;

    @BeforeEach
    void school() {
        SchoolFiles.sound(folder);
    }

    private Trial changed(String... more) {
        return Trial.run(
                folder,
                Stream.concat(Stream.of("cards", "--changed", "--set", "thrusts"), List.of(more).stream())
                        .toArray(String[]::new));
    }

    private List<String> record() throws IOException {
        return Files.readAllLines(folder.resolve("prints.csv"));
    }

    private static String mark(String line) {
        return line.split(",")[1];
    }

    private String reword() {
        SchoolFiles files = new SchoolFiles(folder);
        files.with("riposte.yaml", SchoolFiles.riposte().replace("Arrive softly", "Arrive very softly"));
        return "riposte";
    }

    @Test
    void first_all_is_printed_then_nothing_then_only_what_changed() throws IOException {
        assertEquals(0, changed("--date", "2026-03-01").code());
        List<String> first = record();
        assertEquals("date,mark,drill,size", first.get(0));
        assertEquals(3, first.size());
        assertTrue(first.get(1).matches("2026-03-01,.{4}-.{4},riposte,a6"), first.get(1));

        Trial nothing = changed();
        assertEquals(
                new Trial(0, "Nothing to print: every card is the same as when it was last printed.\n", ""), nothing);

        reword();
        Trial again = changed("--out", "again.pdf");
        assertEquals(0, again.code(), again.err());
        assertTrue(again.out().startsWith("again.pdf: 1 card of size a6"), again.out());
        assertTrue(
                again.out()
                        .endsWith("  " + mark(first.get(1))
                                + "  a6  Parry of quarte, straight riposte, printed on 2026-03-01\n"),
                again.out());
        assertEquals(4, record().size());
        // The clock of the trial stands at 1 September 2026.
        assertTrue(record().get(3).startsWith("2026-09-01,"), record().get(3));
    }

    @Test
    void remarks_and_the_order_of_keys_print_nothing() throws IOException {
        changed();
        Path file = folder.resolve("riposte.yaml");
        String text = Files.readString(file);
        Files.writeString(
                file,
                "# for the autumn\n" + text.substring(text.indexOf("level:"))
                        + text.lines().findFirst().orElseThrow() + "\n");
        assertTrue(changed().out().startsWith("Nothing to print"));
    }

    @Test
    void another_size_is_another_ring() throws IOException {
        changed();
        assertTrue(changed("--card", "a5").out().startsWith("cards.pdf: 2 cards of size a5"));
        assertEquals(5, record().size());
    }

    @Test
    void the_mark_on_the_card_is_the_one_in_the_record() throws IOException {
        changed();
        try (PDDocument document = Loader.loadPDF(folder.resolve("cards.pdf").toFile())) {
            String text = new PDFTextStripper().getText(document).replace('\u00A0', ' ');
            assertTrue(text.contains(mark(record().get(1))), text);
        }
    }

    @Test
    void a_card_in_the_hand_is_told() throws IOException {
        changed("--date", "2026-03-01");
        String old = mark(record().get(1));
        Trial current =
                Trial.run(folder, "identify", old.toLowerCase(Locale.ROOT).replace('-', ' '));
        assertEquals(
                new Trial(
                        0,
                        "Parry of quarte, straight riposte (riposte): this card is current. Printed on 2026-03-01"
                                + " (a6).\n",
                        ""),
                current);
        reword();
        String told = Trial.run(folder, "identify", old).out();
        assertTrue(
                told.startsWith("Parry of quarte, straight riposte (riposte): older version, printed on 2026-03-01"),
                told);
        Files.delete(folder.resolve("riposte.yaml"));
        assertTrue(Trial.run(folder, "identify", old)
                .out()
                .startsWith("riposte: a drill that is no longer in the folder"));
    }

    @Test
    void what_cannot_be_a_mark_or_is_not_known_is_said_in_one_line() {
        for (String sign : List.of("7K3M", "0K3M-P9RX", "7K3M-P9RX")) {
            Trial trial = Trial.run(folder, "identify", sign);
            assertEquals(2, trial.code());
            assertEquals("", trial.out());
            assertEquals(1, trial.err().lines().count(), trial.err());
        }
    }

    @Test
    void where_nothing_is_printed_nothing_is_written_down() throws IOException {
        Files.writeString(folder.resolve("cards.pdf"), "not ours");
        assertEquals(2, changed().code());
        assertFalse(Files.exists(folder.resolve("prints.csv")));
        new SchoolFiles(folder).with("riposte.yaml", SchoolFiles.withoutSafety());
        assertEquals(1, changed("--out", "other.pdf").code());
        assertFalse(Files.exists(folder.resolve("prints.csv")));
    }

    /** As if the program had been stopped between the two: the cards lie there, the record says nothing of them. */
    @Test
    void a_record_that_cannot_be_written_costs_a_second_print() throws IOException {
        Files.createDirectories(folder.resolve("prints.csv"));
        assertEquals(2, changed().code());
        Files.delete(folder.resolve("prints.csv"));
        assertTrue(changed().out().startsWith("cards.pdf: 2 cards"));
    }

    @Test
    void a_torn_last_line_is_printed_again_and_a_foreign_file_left_alone() throws IOException {
        changed();
        Path file = folder.resolve("prints.csv");
        String whole = Files.readString(file);
        Files.writeString(file, whole.substring(0, whole.length() - 4));
        Trial torn = changed();
        assertTrue(torn.out().startsWith("note: the last line of prints.csv is incomplete"), torn.out());
        assertEquals(3, record().size());

        Files.writeString(file, "people,hands\n");
        Trial foreign = changed();
        assertEquals(2, foreign.code());
        assertTrue(foreign.err().startsWith("Line 1 of "), foreign.err());
        assertEquals("people,hands\n", Files.readString(file));
    }

    @Test
    void what_makes_no_sense_together_is_refused() {
        assertEquals(2, changed("--draft").code());
        assertEquals(2, changed("--png", "100").code());
        assertEquals(2, Trial.run(folder, "cards", "--date", "2026-03-01").code());
        Trial day = changed("--date", "1.3.2026");
        assertEquals(2, day.code());
        assertTrue(day.err().contains("'1.3.2026' is not year, month and day"), day.err());
    }

    /** Two rings of the same drills: what makes a card stale in one language may leave the other's as it is. */
    @Test
    void a_ring_in_another_language_is_a_ring_of_its_own() throws IOException {
        assertEquals(0, changed("--date", "2026-03-01").code());
        Trial french = changed("--in", "fr", "--date", "2026-04-01");
        assertEquals(0, french.code(), french.err());
        assertTrue(french.out().startsWith("cards.pdf: 2 cards of size a6"), french.out());
        assertFalse(french.out().contains("off the rings"), french.out());
        assertEquals("date,mark,drill,size,language", record().get(0));
        assertTrue(record().get(1).matches("2026-03-01,.{9},riposte,a6,"), record().get(1));
        assertTrue(record().get(3).matches("2026-04-01,.{9},riposte,a6,fr"), record().get(3));
        assertTrue(changed("--in", "fr").out().startsWith("Nothing to print"));
        assertTrue(changed().out().startsWith("Nothing to print"));

        new SchoolFiles(folder)
                .with(
                        "translations/fr.yaml",
                        "texts:\n  - from: Parry of quarte, straight riposte\n    to: Parade de quarte et riposte\n");
        assertTrue(changed().out().startsWith("Nothing to print"));
        Trial again = changed("--in", "fr", "--out", "again.pdf");
        assertTrue(again.out().startsWith("again.pdf: 1 card of size a6"), again.out());
        assertTrue(again.out().contains("  " + mark(record().get(3)) + "  a6  "), again.out());
        assertFalse(again.out().contains(mark(record().get(1))), again.out());

        String old = Trial.run(folder, "identify", mark(record().get(3))).out();
        assertTrue(old.contains("(riposte), in French: older version, printed on 2026-04-01 (a6)."), old);
        assertTrue(old.contains("The current mark is " + mark(record().get(5)) + "."), old);
        String current = Trial.run(folder, "identify", mark(record().get(5))).out();
        assertTrue(
                current.contains("(riposte), in French: this card is current. Printed on 2026-09-01 (a6)."), current);
    }
}
