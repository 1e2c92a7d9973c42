package org.drillwright.print.pdf;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;

/** The pictures of a document, each kept once as a form (ISO 32000-1, 8.10), however often its pages show it. */
final class Drawn {

    /** Ink may stand over the edge of a picture by half a stroke; a form shows nothing outside its box. */
    private static final double EDGE = 2;

    /** What makes two pictures the same. */
    private record Key(double width, double height, List<Mark> marks) {}

    private final PDDocument document;
    private final Fonts fonts;
    private final Map<Key, COSName> names = new HashMap<>();

    /** The same found by the very list of their marks, as whoever draws a picture again has it; comparing takes long. */
    private final IdentityHashMap<List<Mark>, Map<Rectangle, COSName>> seen = new IdentityHashMap<>();

    Drawn(PDDocument document, Fonts fonts) {
        this.document = document;
        this.fonts = fonts;
    }

    /** The name by which pages show a picture, its lower left corner being the origin. */
    String name(Node.Figure figure) throws IOException {
        Map<Rectangle, COSName> bySize = seen.computeIfAbsent(figure.marks(), marks -> new HashMap<>());
        Rectangle size = new Rectangle(0, 0, figure.box().width(), figure.box().height());
        COSName known = bySize.get(size);
        if (known == null) {
            known = compared(figure);
            bySize.put(size, known);
        }
        return known.getName();
    }

    private COSName compared(Node.Figure figure) throws IOException {
        Key key = new Key(figure.box().width(), figure.box().height(), figure.marks());
        COSName known = names.get(key);
        if (known == null) {
            known = COSName.getPDFName("Picture" + (names.size() + 1));
            names.put(key, known);
            fonts.resources().put(known, form(figure));
        }
        return known;
    }

    private PDFormXObject form(Node.Figure figure) throws IOException {
        Rectangle box = figure.box();
        Operators content = new Operators();
        MarkPen pen = new MarkPen(content, fonts, box.height());
        for (Mark mark : figure.marks()) {
            pen.draw(mark);
        }
        PDStream stream = new PDStream(document, new ByteArrayInputStream(content.toBytes()), COSName.FLATE_DECODE);
        PDFormXObject form = new PDFormXObject(stream);
        form.setFormType(1);
        form.setResources(fonts.inForms());
        form.setBBox(new PDRectangle(
                (float) -EDGE, (float) -EDGE, (float) (box.width() + 2 * EDGE), (float) (box.height() + 2 * EDGE)));
        return form;
    }
}
