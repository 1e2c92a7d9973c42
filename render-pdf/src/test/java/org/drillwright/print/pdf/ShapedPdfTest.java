package org.drillwright.print.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words whose letters take form, order and place from one another. */
class ShapedPdfTest {

    private static final Path NOTO = Path.of("/usr/share/fonts/truetype/noto");

    private static final double SIZE = 100;

    static byte[] devanagari() throws IOException {
        try (InputStream in = ShapedPdfTest.class.getResourceAsStream("/org/drillwright/print/fonts/devanagari.ttf")) {
            return in == null ? new byte[0] : in.readAllBytes();
        }
    }

    static byte[] pdf(String words, Family faces) throws IOException {
        Mark.Text text = new Mark.Text(0, 200, SIZE, Face.REGULAR, words, Ink.BLACK);
        Node paragraph = new Node.Words(Role.PARAGRAPH, List.of(text));
        Frame page = new Frame(2000, 400, 0, List.of(), List.of(new Node.Group(Role.CARD, List.of(paragraph))));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new PdfWriter(faces).write(List.of(page), PdfWriterTest.INFO, out);
        return out.toByteArray();
    }

    private static List<TextPosition> glyphs(byte[] pdf) throws IOException {
        List<TextPosition> glyphs = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition glyph) {
                    glyphs.add(glyph);
                }
            }.getText(document);
        }
        return glyphs;
    }

    private static TextPosition glyph(String said, List<TextPosition> glyphs) {
        return glyphs.stream()
                .filter(glyph -> glyph.getUnicode().contains(said))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing says " + said));
    }

    /** What stands for the glyphs of a word, as the page's content states it. */
    private static String actualTexts(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String content = new String(document.getPage(0).getContents().readAllBytes(), StandardCharsets.ISO_8859_1);
            StringBuilder said = new StringBuilder();
            Pattern.compile("/ActualText <FEFF([0-9a-fA-F]*)>")
                    .matcher(content)
                    .results()
                    .forEach(found -> said.append(
                            new String(HexFormat.of().parseHex(found.group(1)), StandardCharsets.UTF_16BE)));
            return said.toString();
        }
    }

    /** The vowel sign I stands left of the consonant behind which it is written (The Unicode Standard, 12.1). */
    @Test
    void a_vowel_sign_stands_before_the_consonant_it_follows() throws Exception {
        byte[] pdf = pdf("किरण, 12", Family.dejaVu().with(devanagari()));
        List<TextPosition> glyphs = glyphs(pdf);
        assertTrue(glyph("ि", glyphs).getX() < glyph("क", glyphs).getX());
        assertEquals("किरण", actualTexts(pdf));
        assertEquals(
                List.of("NotoSansDevanagari-Regular", "DejaVuSansCondensed"),
                glyphs.stream()
                        .map(glyph -> glyph.getFont().getName().replaceFirst(".*\\+", ""))
                        .distinct()
                        .toList());
    }

    /** Without its rules each letter would have a glyph of its own; with them P and its virama are one half form (12.1). */
    @Test
    void a_letter_that_loses_its_vowel_is_joined_to_the_next() throws Exception {
        Family faces = Family.dejaVu().with(devanagari());
        assertEquals(6, "दीप्ति".length());
        assertEquals(5, glyphs(pdf("दीप्ति", faces)).size());
    }

    @ParameterizedTest
    @CsvSource({"किरण", "दीप्ति", "श्रेया"})
    void a_word_is_as_wide_as_it_is_drawn(String word) throws Exception {
        Family faces = Family.dejaVu().with(devanagari());
        double right = glyphs(pdf(word, faces)).stream()
                .mapToDouble(glyph -> glyph.getX() + glyph.getWidth())
                .max()
                .orElseThrow();
        assertEquals(faces.of(Face.REGULAR).width(word) * SIZE, right, SIZE / 200);
    }

    /** In the program's own typeface: a Lao tone stands over its letter (The Unicode Standard, 16.2), and moves no pen. */
    @Test
    void a_mark_stands_over_its_letter() throws Exception {
        List<TextPosition> glyphs = glyphs(pdf("ນ້ອຍ", Family.dejaVu()));
        TextPosition letter = glyph("ນ", glyphs);
        TextPosition tone = glyph("\u0EC9", glyphs);
        double right = tone.getX() + tone.getWidth();
        assertTrue(right > letter.getX() && right <= letter.getX() + letter.getWidth() + SIZE / 20, right + "");
    }

    /** Read from right to left, point behind letter; the letter that is read first stands at the right. */
    @Test
    void points_go_with_their_letters() throws Exception {
        byte[] pdf = pdf("שָׂרָה", Family.dejaVu());
        assertEquals("שָׂרָה", actualTexts(pdf));
        List<TextPosition> glyphs = glyphs(pdf);
        assertTrue(glyph("ר", glyphs).getX() > glyph("ה", glyphs).getX());
    }

    /**
     * In other scripts too signs stand left of the consonant they are written behind (The Unicode Standard: Bengali 12.2, Tamil
     * 12.6, Myanmar 16.3, the second letter of a Khmer cluster 16.4); skipped where these fonts aren't installed.
     */
    @ParameterizedTest
    @CsvSource({
        "Bengali, \u09B9\u09BF, \u09BF, \u09B9",
        "Tamil, \u0B95\u0BC6, \u0BC6, \u0B95",
        "Malayalam, \u0D15\u0D46, \u0D46, \u0D15",
        "Sinhala, \u0D9A\u0DD9, \u0DD9, \u0D9A",
        "Myanmar, \u1000\u1031, \u1031, \u1000",
        "Khmer, \u179F\u17D2\u179A, \u179A, \u179F"
    })
    void signs_stand_where_their_script_has_them(String script, String word, String sign, String letter)
            throws Exception {
        Path file = NOTO.resolve("NotoSans" + script + "-Regular.ttf");
        assumeTrue(Files.exists(file));
        byte[] pdf = pdf(word, Family.dejaVu().with(Files.readAllBytes(file)));
        List<TextPosition> glyphs = glyphs(pdf);
        assertTrue(glyph(sign, glyphs).getX() < glyph(letter, glyphs).getX());
        assertEquals(word, actualTexts(pdf));
    }
}
