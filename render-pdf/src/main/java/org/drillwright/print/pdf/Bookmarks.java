package org.drillwright.print.pdf;

import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageXYZDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDDocumentOutline;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;
import org.drillwright.print.frame.Frame;

/** The document's bookmarks: by chapter, and in each by drill. Cards that go on with the drill before have none. */
final class Bookmarks {

    private final PDDocumentOutline outline = new PDDocumentOutline();
    private PDOutlineNode chapter = outline;
    private String before = "";

    /** Begins a chapter on the page that is added next. */
    void begin(Chapter next, PDPage page, Frame frame) {
        before = "";
        chapter = next.title().isBlank() ? outline : item(next.title(), page, frame.height(), outline);
        if (chapter instanceof PDOutlineItem item) {
            item.openNode();
        }
    }

    void page(PDPage page, Frame frame) {
        for (CardTitle card : CardTitle.on(frame)) {
            if (!card.words().equals(before)) {
                item(card.words(), page, frame.height() - card.y(), chapter);
            }
            before = card.words();
        }
    }

    void finish(PDDocument document) {
        if (outline.hasChildren()) {
            document.getDocumentCatalog().setDocumentOutline(outline);
        }
    }

    private static PDOutlineItem item(String title, PDPage page, double top, PDOutlineNode under) {
        PDPageXYZDestination destination = new PDPageXYZDestination();
        destination.setPage(page);
        destination.setLeft(0);
        destination.setTop((int) Math.ceil(top));
        PDOutlineItem item = new PDOutlineItem();
        item.setTitle(title);
        item.setDestination(destination);
        under.addLast(item);
        return item;
    }
}
