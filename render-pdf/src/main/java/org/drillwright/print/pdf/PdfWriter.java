package org.drillwright.print.pdf;

import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.drillwright.print.frame.Frame;

/**
 * Writes frames as one tagged document, a page each: PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2) at once. The
 * same frames give the same bytes on one JDK build: nothing in the file comes from a clock.
 */
public final class PdfWriter {

    /** Stands for the time that a document's number is usually drawn from; the title is mixed in. */
    private static final long NUMBER = 0;

    private final DejaVu faces;

    public PdfWriter(DejaVu faces) {
        this.faces = faces;
    }

    /** Leaves the stream open. */
    public void write(List<Frame> sheets, DocumentInfo info, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(NUMBER);
            Conformance.declare(document, info);
            Fonts fonts = new Fonts(document, faces);
            Tags tags = new Tags(document);
            for (Frame sheet : sheets) {
                PDPage page = new PDPage(new PDRectangle((float) sheet.width(), (float) sheet.height()));
                document.addPage(page);
                try (PagePen pen = new PagePen(document, page, fonts, tags.page(page))) {
                    pen.draw(sheet);
                }
            }
            tags.finish();
            document.save(out);
        }
    }
}
