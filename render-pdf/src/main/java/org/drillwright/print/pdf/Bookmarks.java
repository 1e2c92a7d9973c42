package org.drillwright.print.pdf;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
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
    private final Iterator<Chapter> chapters;
    private PDOutlineNode under = outline;
    private int left;
    private String before = "";

    private final Contents contents;
    private final List<Titled> cards = new ArrayList<>();

    /** A card's title and where it stands, in points from the bottom of its page. */
    private record Titled(String words, PDPage page, double top) {}

    Bookmarks(Contents contents) {
        this.contents = contents;
        this.chapters = contents.chapters().iterator();
    }

    /** Takes the front of a page. */
    void page(PDPage page, Frame frame) {
        for (CardTitle card : CardTitle.on(frame)) {
            cards.add(new Titled(card.words(), page, frame.height() - card.y()));
        }
    }

    private void add(Titled card) {
        if (left == 0) {
            begin(card);
        }
        left--;
        if (!card.words().equals(before)) {
            item(card.words(), card.page(), card.top(), under);
        }
        before = card.words();
    }

    private void begin(Titled card) {
        before = "";
        Chapter next = chapters.hasNext() ? chapters.next() : new Chapter("", Integer.MAX_VALUE);
        left = next.cards();
        under = next.title().isBlank() ? outline : item(next.title(), card.page(), card.top(), outline);
        if (under instanceof PDOutlineItem item) {
            item.openNode();
        }
    }

    /** All of them, in the order of reading; what has no title goes on with what stands before it. */
    void finish(PDDocument document) {
        contents.read(cards).stream().filter(card -> !card.words().isEmpty()).forEach(this::add);
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
