package org.drillwright.print.pdf;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentCatalog;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.drillwright.model.CardSize;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.print.Drills;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.impose.Imposition;
import org.drillwright.print.layout.CardLayout;
import org.drillwright.print.layout.block.SheetNote;
import org.drillwright.print.layout.words.Labels;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PdfWriterTest {

    static final DocumentInfo INFO = new DocumentInfo("Cards & <drills> of Saltmarsh Hall", Locale.ENGLISH);

    /** Every side a page: Drills.second goes over to its back. */
    static List<Frame> cards(CardSize size, Drill... drills) {
        return CardLayout.lay(
                        Arrays.stream(drills).map(Drills::subject).toList(),
                        size,
                        Labels.in(Language.ENGLISH),
                        Family.dejaVu())
                .sides();
    }

    static byte[] pdf(List<Frame> sheets) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfWriter(Family.dejaVu()).write(sheets, INFO, out);
        return out.toByteArray();
    }

    static List<Frame> sheets(SheetSize sheet) {
        return Imposition.impose(
                cards(CardSize.A6, Drills.riposte(), Drills.second(), Drills.solo()),
                sheet,
                SheetNote.of(Labels.in(Language.ENGLISH), Family.dejaVu()));
    }

    @Test
    void a_side_is_a_page_of_its_size() throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf(cards(CardSize.A6, Drills.riposte(), Drills.second())))) {
            assertEquals(3, read.getNumberOfPages());
            assertEquals(297.64, read.getPage(0).getMediaBox().getWidth(), 0.01);
            assertEquals(419.53, read.getPage(0).getMediaBox().getHeight(), 0.01);
        }
    }

    /** However often it is shown, and whatever is said of it each time. */
    @Test
    void equal_pictures_stand_in_the_document_once() throws IOException {
        List<Mark> marks = List.of(Mark.Shape.filled(Outline.circle(10, 10, 9), Ink.BLACK));
        List<Frame> pages = new ArrayList<>();
        for (String said : List.of("one", "another", "a third")) {
            Node figure = new Node.Figure(said, new Rectangle(5 + pages.size(), 7, 20, 20), marks);
            pages.add(new Frame(100, 100, 0, List.of(), List.of(figure, figure.moved(30, 30))));
        }
        Set<COSBase> forms = new HashSet<>();
        try (PDDocument read = Loader.loadPDF(pdf(pages))) {
            for (PDPage page : read.getPages()) {
                for (COSName name : page.getResources().getXObjectNames()) {
                    forms.add(page.getResources().getXObject(name).getCOSObject());
                }
            }
        }
        assertEquals(1, forms.size());
    }

    @Test
    void the_document_says_what_it_is() throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf(cards(CardSize.A6, Drills.riposte())))) {
            PDDocumentCatalog catalog = read.getDocumentCatalog();
            assertEquals("en", catalog.getLanguage());
            assertTrue(catalog.getMarkInfo().isMarked());
            assertTrue(catalog.getViewerPreferences().displayDocTitle());
            assertEquals("None", catalog.getViewerPreferences().getPrintScaling());
            assertEquals(INFO.title(), read.getDocumentInformation().getTitle());
        }
    }

    @Test
    void the_words_can_be_copied() throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf(cards(CardSize.A6, Drills.riposte())))) {
            String text = new PDFTextStripper().getText(read).replaceAll("\\s+", " ");
            assertTrue(text.contains("Extend to the high inside line and lunge. Parry quarte. lunge"), text);
            assertTrue(text.contains("Stop the point on the jacket; if a blade snaps, call halt."), text);
        }
    }

    @Test
    void another_reader_finds_the_words_too(@TempDir Path folder) throws Exception {
        boolean wanted = "true".equals(System.getenv("CI"));
        assumeTrue(wanted || ForkedPrinting.isInstalled("pdftotext"), "poppler's pdftotext is not installed");
        Path file = Files.write(folder.resolve("sheet.pdf"), pdf(sheets(SheetSize.LETTER)));
        Process process = new ProcessBuilder("pdftotext", "-raw", "-enc", "UTF-8", file.toString(), "-").start();
        String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertEquals(0, process.waitFor());
        String words = text.replaceAll("\\s+", " ");
        assertTrue(
                words.contains("Hold the lunge and take the touch. Riposte straight to the high inside line."), words);
        assertTrue(words.contains("Come to attention."), words);
        assertTrue(words.contains("Print at 100 %"), words);
    }

    @Test
    void same_input_same_bytes() throws IOException {
        byte[] once = pdf(sheets(SheetSize.A4));
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("tr-TR"));
            TimeZone.setDefault(TimeZone.getTimeZone("Asia/Tokyo"));
            assertArrayEquals(once, pdf(sheets(SheetSize.A4)));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void other_input_other_bytes() throws IOException {
        assertFalse(Arrays.equals(pdf(cards(CardSize.A6, Drills.riposte())), pdf(cards(CardSize.A6, Drills.solo()))));
    }
}
