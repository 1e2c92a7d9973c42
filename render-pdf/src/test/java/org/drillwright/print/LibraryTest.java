package org.drillwright.print;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.drillwright.check.Subject;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;
import org.drillwright.phrase.Count;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.evening.Wished;
import org.drillwright.plan.pair.Pairing;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.roster.ClassBrief;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.words.CardSubject;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PdfWriter;
import org.drillwright.report.Paint;
import org.drillwright.report.TextReport;
import org.drillwright.school.ClassFolder;
import org.drillwright.school.SchoolFolder;
import org.drillwright.source.Finding;
import org.junit.jupiter.api.Test;

/** Drillwright as another program uses it; the page of the library shows these very lines. */
class LibraryTest {

    private static final Path SCHOOL = Path.of("..", "drills");

    @Test
    void read_and_check() throws IOException {
        // read and check
        SchoolFolder school = SchoolFolder.open(SCHOOL);
        String report = TextReport.of(school.findings(), Paint.NONE);
        Subject drill = school.entry("parry-of-quarte").orElseThrow().subject().orElseThrow();
        // end
        // The one note is of a free choice, which its author accepts.
        assertEquals(
                List.of("not-fully-checked"),
                school.findings().stream().map(Finding::rule).toList());
        assertTrue(report.contains("Accepted by the author"), report);
        assertEquals("Parry of quarte and straight riposte", drill.drill().title());
    }

    @Test
    void play() throws IOException {
        Subject drill = Example.drill("parry-of-quarte");
        // play
        Count first = drill.replay().counts().get(0);
        String before = first.begin().measure().words().english();
        String after = first.end().measure().words().english();
        boolean refused =
                first.moves().stream().anyMatch(move -> !move.refusals().isEmpty());
        // end
        assertEquals("lunge distance", before);
        assertEquals("extension distance", after);
        assertFalse(refused);
    }

    @Test
    void plan() throws IOException {
        SchoolFolder school = SchoolFolder.open(SCHOOL);
        // plan
        ClassFolder classes = ClassFolder.open(school);
        ClassBrief brief =
                classes.read(classes.named("tonight").orElseThrow()).value().orElseThrow();
        ClassPlan evening = ClassPlan.of(
                school.school(),
                classes.roster().orElseThrow(),
                brief,
                classes.history(),
                Wished.of(school.school(), brief, classes.drills()));
        PairingPlan pairs = Pairing.of(evening.pairing()).plan();
        // end
        assertEquals(12, pairs.rounds().get(0).groups().size());
        assertTrue(evening.lesson().fits());
    }

    @Test
    void render() throws IOException {
        Subject drill = Example.drill("parry-of-quarte");
        // render
        CardSubject card = new CardSubject(
                drill.drill(), drill.school(), Optional.empty(), false, List.of(), Optional.of(drill.replay()));
        List<Frame> cards = CardLayout.lay(List.of(card), CardSize.A6, Labels.in(Language.ENGLISH), Family.dejaVu())
                .sides();
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        new PdfWriter(Family.dejaVu()).write(cards, new DocumentInfo("A card", Language.ENGLISH.locale()), pdf);
        // end
        assertEquals("%PDF", new String(pdf.toByteArray(), 0, 4, StandardCharsets.US_ASCII));
    }

    /** The lines between a mark and its end, as the page shows them. */
    @Test
    void the_page_shows_these_lines() throws IOException {
        String source =
                Files.readString(Path.of("src", "test", "java", "org", "drillwright", "print", "LibraryTest.java"));
        String page = Files.readString(Path.of("docs", "library.md"));
        for (String part : List.of("read and check", "play", "plan", "render")) {
            int from = source.indexOf("        // " + part + "\n") + ("        // " + part + "\n").length();
            String lines = source.substring(from, source.indexOf("        // end", from))
                    .indent(-8);
            assertTrue(lines.length() > 100 && page.contains("```java\n" + lines + "```"), part);
        }
    }

    @Test
    void many_threads_at_once_find_the_same() throws Exception {
        ExecutorService threads = Executors.newFixedThreadPool(4);
        try {
            List<Future<String>> reports = IntStream.range(0, 8)
                    .mapToObj(at -> threads.submit(() -> printed("parry-of-quarte")))
                    .toList();
            String alone = printed("parry-of-quarte");
            for (Future<String> report : reports) {
                assertEquals(alone, report.get());
            }
        } finally {
            threads.shutdownNow();
        }
    }

    /** All of it, from the file to the bytes of the card. */
    private static String printed(String id) throws IOException {
        SchoolFolder school = SchoolFolder.open(SCHOOL);
        Subject drill = school.entry(id).orElseThrow().subject().orElseThrow();
        List<Frame> cards = CardLayout.lay(
                        List.of(Example.card(drill)), CardSize.A6, Labels.in(Language.ENGLISH), Family.dejaVu())
                .sides();
        ByteArrayOutputStream pdf = new ByteArrayOutputStream();
        new PdfWriter(Family.dejaVu()).write(cards, new DocumentInfo("A card", Language.ENGLISH.locale()), pdf);
        return TextReport.of(school.findings(), Paint.NONE) + pdf.toString(StandardCharsets.ISO_8859_1);
    }
}
