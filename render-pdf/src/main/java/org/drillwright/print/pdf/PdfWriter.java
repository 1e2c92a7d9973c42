package org.drillwright.print.pdf;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.drillwright.print.frame.Frame;
import org.drillwright.wording.Direction;

/**
 * Writes frames as one tagged document, a page each: PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2) at once. The
 * same frames give the same bytes on one JDK build: nothing in the file comes from a clock.
 */
public final class PdfWriter {

    /** Stands for the time that a document's number is usually drawn from; the title is mixed in. */
    private static final long NUMBER = 0;

    private final Family faces;

    public PdfWriter(Family faces) {
        this.faces = faces;
    }

    /** Writes pages without chapters. Leaves the stream open. */
    public void write(List<Frame> pages, DocumentInfo info, OutputStream out) throws IOException {
        write(pages, Contents.PLAIN, info, out);
    }

    /** Writes pages with bookmarks by chapter and drill. Leaves the stream open. */
    public void write(List<Frame> pages, Contents contents, DocumentInfo info, OutputStream out) throws IOException {
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(NUMBER);
            Conformance.declare(document, info);
            Fonts fonts = new Fonts(document, faces);
            Drawn drawn = new Drawn(document, fonts);
            Tags tags = new Tags(document, Direction.of(info.language()));
            Bookmarks bookmarks = new Bookmarks(contents);
            for (int at = 0; at < pages.size(); at++) {
                PDPage page = page(document, pages.get(at), fonts, drawn, tags);
                boolean back = contents.bothSides() && at % 2 == 1;
                if (!back) {
                    bookmarks.page(page, pages.get(at));
                }
            }
            bookmarks.finish(document);
            fonts.finish();
            tags.finish(contents);
            document.save(out);
        }
    }

    /** The whole document at once; in memory nothing refuses to be written. */
    public byte[] bytes(List<Frame> pages, Contents contents, DocumentInfo info) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            write(pages, contents, info, bytes);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
        return bytes.toByteArray();
    }

    private static PDPage page(PDDocument document, Frame frame, Fonts fonts, Drawn drawn, Tags tags)
            throws IOException {
        PDPage page = new PDPage(new PDRectangle((float) frame.width(), (float) frame.height()));
        document.addPage(page);
        page.setResources(fonts.resources());
        byte[] content = new PagePen(fonts, drawn, tags.page(page)).draw(frame);
        page.setContents(new PDStream(document, new ByteArrayInputStream(content), COSName.FLATE_DECODE));
        return page;
    }
}
