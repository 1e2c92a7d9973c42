package org.drillwright.print.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.frame.RunRole;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Where letters of a line that is read from right to left come to lie on the page. */
class RightToLeftPdfTest {

    /** As far as letters are seen beside their place, in points. */
    private static final double SEEN = 0.2;

    private static Mark.Text line(String words, double baseline, Face face) {
        Mark.Text text = new Mark.Text(40, baseline, 10, face, words, Ink.BLACK);
        RunRole span = text.span().rightToLeft(true);
        return new Mark.Text(40, baseline, 10, face, words, Ink.BLACK, 0, span);
    }

    /** Letters that one sees, from the top: those of a line from its left. */
    private static List<TextPosition> letters(byte[] pdf) throws IOException {
        List<TextPosition> letters = new ArrayList<>();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition text) {
                    if (!text.getUnicode().isBlank()) {
                        letters.add(text);
                    }
                }
            }.getText(document);
        }
        return letters;
    }

    /** A line that another follows has a space behind it for who copies it; it takes no room of the line. */
    @ParameterizedTest
    @CsvSource({
        "Not fully checked: counts 1. Not, fully checked.",
        "AVATAR To Ty, fully checked.",
        "הדיפת קוורטה, ותשובה ישרה.",
        "הדיפת Avant קוורטה, ותשובה.",
        "\u0635\u062F \u0628\u0627\u0644\u0623\u0631\u0628\u0639\u0629, \u062B\u0645 \u0631\u062F."
    })
    void each_line_fills_its_place_from_edge_to_edge(String first, String second) throws IOException {
        List<Mark.Text> lines = List.of(line(first, 30, Face.BOLD), line(second, 45, Face.BOLD));
        Frame frame = new Frame(400, 60, 0, List.of(), List.of(new Node.Words(Role.PARAGRAPH, lines)));
        List<TextPosition> letters = letters(PdfWriterTest.pdf(List.of(frame)));
        for (Mark.Text line : lines) {
            List<TextPosition> on = letters.stream()
                    .filter(letter -> Math.abs(letter.getY() - line.baseline()) < 1)
                    .toList();
            double left = on.stream().mapToDouble(TextPosition::getX).min().orElseThrow();
            double right = on.stream()
                    .mapToDouble(letter -> letter.getX() + letter.getWidth())
                    .max()
                    .orElseThrow();
            assertEquals(line.x(), left, SEEN, line.text());
            assertEquals(Flat.box(line).right(), right, SEEN, line.text());
        }
    }
}
