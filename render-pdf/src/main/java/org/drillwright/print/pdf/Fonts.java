package org.drillwright.print.pdf;

import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.drillwright.print.frame.Face;
import org.drillwright.print.text.Typeface;

/** The faces that one document embeds, each when it is first used. */
final class Fonts {

    private final PDDocument document;
    private final DejaVu faces;
    private final Map<Face, PDFont> embedded = new EnumMap<>(Face.class);

    Fonts(PDDocument document, DejaVu faces) {
        this.document = document;
        this.faces = faces;
    }

    PDFont font(Face face) throws IOException {
        PDFont font = embedded.get(face);
        if (font == null) {
            font = PDType0Font.load(document, faces.font(face), true);
            embedded.put(face, font);
        }
        return font;
    }

    Typeface measures(Face face) {
        return faces.of(face);
    }
}
