package org.drillwright.print.pdf;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.util.Matrix;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;

/** Draws a frame on a page and tags what it draws. */
final class PagePen {

    private final Operators page = new Operators();
    private final Fonts fonts;
    private final Drawn drawn;
    private final Tags.Page tags;

    /** From a frame's coordinates, with y upwards, to the page's: needed where a tag states a place. */
    private Matrix toPage = new Matrix();

    PagePen(Fonts fonts, Drawn drawn, Tags.Page tags) {
        this.fonts = fonts;
        this.drawn = drawn;
        this.tags = tags;
    }

    /** The page's content. */
    byte[] draw(Frame frame) throws IOException {
        draw(frame, tags.root());
        return page.toBytes();
    }

    private void draw(Frame frame, PDStructureElement parent) throws IOException {
        MarkPen marks = new MarkPen(page, fonts, frame.height());
        if (!frame.backdrop().isEmpty()) {
            page.op("/Artifact BMC");
            for (Mark mark : frame.backdrop()) {
                marks.draw(mark);
            }
            page.op("EMC");
        }
        for (Node node : frame.content()) {
            draw(node, parent, marks);
        }
    }

    private void draw(Node node, PDStructureElement parent, MarkPen marks) throws IOException {
        if (node instanceof Node.Group group) {
            PDStructureElement element = tags.element(group.role(), parent);
            for (Node part : group.parts()) {
                draw(part, element, marks);
            }
        } else if (node instanceof Node.Words words) {
            words(words, tags.element(words.role(), parent), marks);
        } else if (node instanceof Node.Sign sign) {
            begin(tags.sign(sign.said(), parent));
            for (Mark mark : sign.marks()) {
                marks.draw(mark);
            }
            page.op("EMC");
        } else if (node instanceof Node.Figure figure) {
            figure(figure, parent, marks);
        } else if (node instanceof Node.Placed placed) {
            placed(placed, parent, marks);
        }
    }

    private void words(Node.Words words, PDStructureElement element, MarkPen marks) throws IOException {
        if (words.lines().isEmpty()) {
            return;
        }
        begin(element);
        for (int at = 0; at < words.lines().size(); at++) {
            Mark.Text line = words.lines().get(at);
            boolean last = at == words.lines().size() - 1;
            marks.text(line, last ? "" : MarkPen.joint(line, words.lines().get(at + 1)));
        }
        page.op("EMC");
    }

    private void begin(PDStructureElement element) {
        page.put('/').word(element.getStructureType()).word("<</MCID");
        page.word(String.valueOf(tags.content(element))).op(">> BDC");
    }

    private void figure(Node.Figure figure, PDStructureElement parent, MarkPen marks) throws IOException {
        PDStructureElement element = tags.figure(figure.alternative(), onPage(figure.box(), marks.height()), parent);
        begin(element);
        page.op("q");
        page.numbers(1, 0, 0, 1, figure.box().x(), marks.height() - figure.box().bottom())
                .op("cm");
        page.put('/').word(drawn.name(figure)).op("Do");
        page.op("Q");
        page.op("EMC");
    }

    private Box onPage(Box box, double height) {
        var low = toPage.transformPoint((float) box.x(), (float) (height - box.bottom()));
        var high = toPage.transformPoint((float) box.right(), (float) (height - box.y()));
        double x = Math.min(low.getX(), high.getX());
        double y = Math.min(low.getY(), high.getY());
        return new Box(x, y, Math.abs(high.getX() - low.getX()), Math.abs(high.getY() - low.getY()));
    }

    private void placed(Node.Placed placed, PDStructureElement parent, MarkPen marks) throws IOException {
        Matrix there = there(placed, marks.height());
        Matrix outside = toPage;
        toPage = there.multiply(outside);
        page.op("q");
        for (int row = 0; row < 3; row++) {
            page.numbers(there.getValue(row, 0), there.getValue(row, 1));
        }
        page.op("cm");
        draw(placed.frame(), parent);
        page.op("Q");
        toPage = outside;
    }

    /** From the placed frame's coordinates to those of the frame around it, both with y upwards. */
    private static Matrix there(Node.Placed placed, double height) {
        Box box = placed.box();
        float left = (float) box.x();
        float right = (float) box.right();
        float top = (float) (height - box.y());
        float bottom = (float) (height - box.bottom());
        return switch (placed.top()) {
            case UP -> Matrix.getTranslateInstance(left, bottom);
            case LEFT -> new Matrix(0, 1, -1, 0, right, bottom);
            case DOWN -> new Matrix(-1, 0, 0, -1, right, top);
            case RIGHT -> new Matrix(0, -1, 1, 0, left, top);
        };
    }
}
