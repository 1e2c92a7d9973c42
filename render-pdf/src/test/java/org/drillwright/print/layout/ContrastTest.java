package org.drillwright.print.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.drillwright.model.CardSize;
import org.drillwright.model.Language;
import org.drillwright.print.Example;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.layout.block.DraftMark;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.DocumentInfo;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.pdf.PdfWriter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Nothing is told by colour: neither a grey copy nor colour-blind eyes lose anything. */
class ContrastTest {

    /** Machado, Oliveira and Fernandes 2009, severity 1.0, for linear RGB; from memory. */
    private static double[] deficiency(String name) {
        return switch (name) {
            case "protan" ->
                new double[] {
                    0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998
                };
            case "deutan" ->
                new double[] {0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881
                };
            case "tritan" ->
                new double[] {
                    1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900
                };
            default -> throw new IllegalArgumentException(name);
        };
    }

    private static BufferedImage front() throws Exception {
        List<Frame> cards = CardLayout.lay(
                        List.of(Example.card(Example.drill("circular-parry-of-sixte"))),
                        CardSize.A6,
                        Labels.in(Language.ENGLISH),
                        Family.dejaVu())
                .fronts();
        java.io.ByteArrayOutputStream out = new java.io.ByteArrayOutputStream();
        new PdfWriter(Family.dejaVu()).write(cards, new DocumentInfo("Front", java.util.Locale.ENGLISH), out);
        try (PDDocument document = Loader.loadPDF(out.toByteArray())) {
            return new PDFRenderer(document).renderImageWithDPI(0, 150);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"protan", "deutan", "tritan"})
    void colour_blind_eyes_see_the_same_card(String name) throws Exception {
        double[] seen = deficiency(name);
        BufferedImage front = front();
        for (int y = 0; y < front.getHeight(); y++) {
            for (int x = 0; x < front.getWidth(); x++) {
                int pixel = front.getRGB(x, y);
                double[] rgb = {linear(pixel >> 16 & 255), linear(pixel >> 8 & 255), linear(pixel & 255)};
                for (int row = 0; row < 3; row++) {
                    double there = seen[3 * row] * rgb[0] + seen[3 * row + 1] * rgb[1] + seen[3 * row + 2] * rgb[2];
                    assertEquals(rgb[row], there, 0.01);
                }
            }
        }
    }

    /** WCAG 2.2, 1.4.6: text at 7 to 1 or more on whatever is behind it. */
    @Test
    void text_has_contrast_on_all_that_is_behind_it() {
        assertTrue(contrast(Ink.BLACK, DraftMark.INK) >= 7);
        assertTrue(contrast(Ink.WHITE, Ink.BLACK) >= 7);
    }

    private static double contrast(Ink one, Ink other) {
        double light = Math.max(luminance(one), luminance(other));
        double dark = Math.min(luminance(one), luminance(other));
        return (light + 0.05) / (dark + 0.05);
    }

    private static double luminance(Ink ink) {
        return linear((int) Math.round(255 * ink.lightness()));
    }

    /** The curve of sRGB, IEC 61966-2-1. */
    private static double linear(int value) {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
