package org.drillwright.print.pdf;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.util.Matrix;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.RunRole;
import org.drillwright.print.text.Typeface;

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
        } else if (node instanceof Node.Anchor anchor) {
            Rectangle there = onPage(new Rectangle(anchor.x(), anchor.y(), 0, 0), marks.height());
            tags.anchor(anchor.name(), there.x(), there.y());
        } else if (node instanceof Node.Placed placed) {
            placed(placed, parent, marks);
        }
    }

    private void words(Node.Words words, PDStructureElement element, MarkPen marks) throws IOException {
        List<Mark.Text> runs = words.lines();
        int start = 0;
        while (start < runs.size()) {
            RunRole span = runs.get(start).span();
            int end = start + 1;
            while (end < runs.size() && runs.get(end).span().equals(span)) {
                end++;
            }
            begin(span.isPlain() ? element : span(span, runs.subList(start, end), element, marks));
            for (int at = start; at < end; at++) {
                boolean last = at == runs.size() - 1;
                marks.text(runs.get(at), last ? "" : MarkPen.joint(runs.get(at), runs.get(at + 1)));
            }
            page.op("EMC");
            start = end;
        }
    }

    private PDStructureElement span(RunRole span, List<Mark.Text> runs, PDStructureElement parent, MarkPen marks)
            throws IOException {
        StringBuilder said = new StringBuilder();
        List<Rectangle> boxes = new ArrayList<>();
        for (Mark.Text run : runs) {
            Typeface face = fonts.face(run.face());
            double high = face.ascent() * run.size();
            double width = face.width(run.text()) * run.size();
            boxes.add(onPage(
                    new Rectangle(run.x(), run.baseline() - high, width, high + face.descent() * run.size()),
                    marks.height()));
            said.append(said.isEmpty() || said.charAt(said.length() - 1) == ' ' ? "" : " ")
                    .append(run.text());
        }
        return tags.span(span, said.toString().strip(), boxes, parent);
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

    private Rectangle onPage(Rectangle box, double height) {
        var low = toPage.transformPoint((float) box.x(), (float) (height - box.bottom()));
        var high = toPage.transformPoint((float) box.right(), (float) (height - box.y()));
        double x = Math.min(low.getX(), high.getX());
        double y = Math.min(low.getY(), high.getY());
        return new Rectangle(x, y, Math.abs(high.getX() - low.getX()), Math.abs(high.getY() - low.getY()));
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
        Rectangle box = placed.box();
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
