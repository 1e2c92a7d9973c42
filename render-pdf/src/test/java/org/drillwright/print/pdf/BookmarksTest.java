package org.drillwright.print.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.drillwright.model.CardSize;
import org.drillwright.model.SheetSize;
import org.drillwright.print.Drills;
import org.drillwright.print.frame.Frame;
import org.junit.jupiter.api.Test;

/** Bookmarks by set and drill, each as {@code depth title page}. */
class BookmarksTest {

    static final String SECOND = "Second intention: false attack, parry of the riposte, counter-riposte in the lunge";

    private static byte[] pdf(List<Frame> pages, Contents contents) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfWriter(Family.dejaVu()).write(pages, contents, PdfWriterTest.INFO, out);
        return out.toByteArray();
    }

    private static List<String> bookmarks(byte[] pdf) throws IOException {
        List<String> found = new ArrayList<>();
        try (PDDocument read = Loader.loadPDF(pdf)) {
            collect(read, read.getDocumentCatalog().getDocumentOutline(), 0, found);
        }
        return found;
    }

    private static void collect(PDDocument document, PDOutlineNode node, int depth, List<String> into)
            throws IOException {
        for (PDOutlineItem item : node.children()) {
            int page = document.getPages().indexOf(item.findDestinationPage(document)) + 1;
            into.add(depth + " " + item.getTitle() + " " + page);
            collect(document, item, depth + 1, into);
        }
    }

    @Test
    void drills_stand_under_their_sets_and_a_further_card_has_none_of_its_own() throws IOException {
        List<Frame> foil = PdfWriterTest.cards(CardSize.A6, Drills.riposte(), Drills.second());
        assertEquals(3, foil.size(), "the second drill has two sides");
        List<Frame> calls = PdfWriterTest.cards(CardSize.A6, Drills.solo());
        List<Frame> pages = Stream.concat(foil.stream(), calls.stream()).toList();
        Contents contents = new Contents(List.of(new Chapter("Foil", 3), new Chapter("Calls", 1)), false);
        assertEquals(
                List.of(
                        "0 Foil 1",
                        "1 Parry of quarte, direct riposte 1",
                        "1 " + SECOND + " 2",
                        "0 Calls 4",
                        "1 Advance and retreat by call 4"),
                bookmarks(pdf(pages, contents)));
    }

    @Test
    void sets_that_share_a_sheet_are_told_apart() throws IOException {
        Contents contents = new Contents(List.of(new Chapter("Foil", 3), new Chapter("Calls", 1)), false);
        assertEquals(
                List.of(
                        "0 Foil 1",
                        "1 Parry of quarte, direct riposte 1",
                        "1 " + SECOND + " 1",
                        "0 Calls 1",
                        "1 Advance and retreat by call 1"),
                bookmarks(pdf(PdfWriterTest.sheets(SheetSize.A4), contents)));
    }

    @Test
    void backs_have_none() throws IOException {
        Frame card = PdfWriterTest.cards(CardSize.A6, Drills.riposte()).get(0);
        assertEquals(
                List.of("0 Parry of quarte, direct riposte 1"),
                bookmarks(pdf(
                        List.of(
                                card,
                                PdfWriterTest.cards(CardSize.A6, Drills.solo()).get(0)),
                        new Contents(List.of(), true))));
    }

    @Test
    void drills_of_no_set_stand_by_themselves() throws IOException {
        byte[] pdf = PdfWriterTest.pdf(PdfWriterTest.sheets(SheetSize.A4));
        assertEquals(
                List.of("0 Parry of quarte, direct riposte 1", "0 " + SECOND + " 1", "0 Advance and retreat by call 1"),
                bookmarks(pdf));
    }

    @Test
    void a_document_without_cards_has_none() throws IOException {
        byte[] pdf = PdfWriterTest.pdf(List.of(new Frame(100, 100, 0, List.of(), List.of())));
        try (PDDocument read = Loader.loadPDF(pdf)) {
            assertNull(read.getDocumentCatalog().getDocumentOutline());
        }
    }
}
