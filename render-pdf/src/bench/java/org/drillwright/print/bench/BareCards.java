package org.drillwright.print.bench;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDMetadata;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkInfo;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.util.Matrix;

/**
 * The bare loop: writes what {@link RecordCards} noted by the library's own calls, nothing measured, nothing broken into
 * lines: {@code BareCards RECORD FILE}. A record of no page gives the empty tagged document with both fonts.
 */
public final class BareCards {

    private static final String FOLDER = "/net/sf/jasperreports/fonts/dejavu/";

    /** About as long as the packet that the program writes. */
    private static final int PACKET = 2000;

    private final DataInputStream in;
    private final PDDocument document;
    private final PDType0Font[] fonts;
    private final PDStructureTreeRoot tree = new PDStructureTreeRoot();
    private final Deque<PDStructureNode> open = new ArrayDeque<>();
    private final List<PDFormXObject> forms = new ArrayList<>();
    private final Map<Integer, PDParentTreeValue> parents = new HashMap<>();

    private BareCards(DataInputStream in, PDDocument document) throws IOException {
        this.in = in;
        this.document = document;
        this.fonts = new PDType0Font[] {font("DejaVuSansCondensed.ttf"), font("DejaVuSansCondensed-Bold.ttf")};
    }

    public static void main(String[] args) throws IOException {
        try (DataInputStream in = new DataInputStream(new BufferedInputStream(Files.newInputStream(Path.of(args[0]))));
                OutputStream out = new BufferedOutputStream(Files.newOutputStream(Path.of(args[1])));
                PDDocument document = new PDDocument()) {
            new BareCards(in, document).write();
            document.save(out);
        }
    }

    private PDType0Font font(String file) throws IOException {
        try (InputStream bytes = BareCards.class.getResourceAsStream(FOLDER + file)) {
            if (bytes == null) {
                throw new IllegalStateException(file + " is not on the class path");
            }
            TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(bytes.readAllBytes()));
            font.setEnableGsub(false);
            return PDType0Font.load(document, font, true);
        }
    }

    private void write() throws IOException {
        document.setDocumentId(0L);
        PDMarkInfo marked = new PDMarkInfo();
        marked.setMarked(true);
        document.getDocumentCatalog().setMarkInfo(marked);
        document.getDocumentCatalog().setLanguage("en");
        PDMetadata metadata = new PDMetadata(document);
        metadata.importXMPMetadata(new byte[PACKET]);
        document.getDocumentCatalog().setMetadata(metadata);
        document.getDocumentCatalog().setStructureTreeRoot(tree);
        PDStructureElement root = new PDStructureElement("Document", tree);
        tree.appendKid(root);
        open.push(root);
        int next = in.readByte();
        if (next == Recorded.END) {
            empty();
        }
        while (next != Recorded.END) {
            page();
            next = in.readByte();
        }
        PDNumberTreeNode numbers = new PDNumberTreeNode(PDParentTreeValue.class);
        numbers.setNumbers(parents);
        tree.setParentTree(numbers);
        tree.setParentTreeNextKey(parents.size());
    }

    /** One page that shows a character of each face. */
    private void empty() throws IOException {
        PDPage page = new PDPage(PDRectangle.A6);
        document.addPage(page);
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
            stream.beginMarkedContent(COSName.ARTIFACT);
            for (PDType0Font font : fonts) {
                stream.beginText();
                stream.setFont(font, 9);
                stream.showText("x");
                stream.endText();
            }
            stream.endMarkedContent();
        }
    }

    private void page() throws IOException {
        PDPage page = new PDPage(new PDRectangle(in.readFloat(), in.readFloat()));
        document.addPage(page);
        COSArray content = new COSArray();
        page.setStructParents(parents.size());
        parents.put(parents.size(), new PDParentTreeValue(content));
        try (PDPageContentStream stream = new PDPageContentStream(document, page)) {
            for (int next = in.readByte(); next != Recorded.PAGE_END; next = in.readByte()) {
                step(next, page, content, stream);
            }
        }
    }

    private void step(int next, PDPage page, COSArray content, PDPageContentStream stream) throws IOException {
        switch (next) {
            case Recorded.ELEMENT -> element(page);
            case Recorded.ELEMENT_END -> open.pop();
            case Recorded.MARKED -> marked((PDStructureElement) open.getFirst(), content, stream);
            case Recorded.ARTIFACT -> stream.beginMarkedContent(COSName.ARTIFACT);
            case Recorded.MARKED_END -> stream.endMarkedContent();
            case Recorded.TEXT -> text(stream);
            case Recorded.LINE -> line(stream);
            case Recorded.SHAPE -> shape(stream);
            case Recorded.CONTOUR -> contour(stream);
            case Recorded.FORM -> form(page, content);
            case Recorded.SHOW -> show(stream);
            default -> throw new IOException("no such record: " + next);
        }
    }

    private void element(PDPage page) throws IOException {
        String type = in.readUTF();
        String more = in.readUTF();
        PDStructureNode parent = open.getFirst();
        PDStructureElement element = new PDStructureElement(type, parent);
        element.setPage(page);
        parent.appendKid(element);
        if ("Figure".equals(type)) {
            element.setAlternateDescription(more);
        } else if ("Span".equals(type)) {
            element.setActualText(more);
        } else if (!more.isEmpty()) {
            PDTableAttributeObject table = new PDTableAttributeObject();
            table.setScope(more);
            element.addAttribute(table);
        }
        open.push(element);
    }

    private static void marked(PDStructureElement element, COSArray content, PDPageContentStream stream)
            throws IOException {
        stream.beginMarkedContent(COSName.getPDFName(element.getStructureType()), content.size());
        element.appendKid(content.size());
        content.add(element.getCOSObject());
    }

    private void text(PDPageContentStream stream) throws IOException {
        PDType0Font font = fonts[in.readByte()];
        float size = in.readFloat();
        float x = in.readFloat();
        float y = in.readFloat();
        float degrees = in.readFloat();
        stream.beginText();
        stream.setNonStrokingColor(in.readFloat());
        stream.setFont(font, size);
        stream.setTextMatrix(Matrix.getRotateInstance(Math.toRadians(degrees), x, y));
        Object[] pieces = new Object[in.readShort()];
        for (int at = 0; at < pieces.length; at++) {
            pieces[at] = at % 2 == 0 ? in.readUTF() : (Object) in.readFloat();
        }
        stream.showTextWithPositioning(pieces);
        stream.endText();
    }

    private void line(PDPageContentStream stream) throws IOException {
        stream.moveTo(in.readFloat(), in.readFloat());
        stream.lineTo(in.readFloat(), in.readFloat());
        stream.setLineWidth(in.readFloat());
        stream.setStrokingColor(in.readFloat());
        stream.stroke();
    }

    private void shape(PDPageContentStream stream) throws IOException {
        float fill = in.readFloat();
        float width = in.readFloat();
        float ink = in.readFloat();
        segments(stream);
        stream.closePath();
        if (fill >= 0) {
            stream.setNonStrokingColor(fill);
        }
        if (width >= 0) {
            stream.setLineWidth(width);
            stream.setStrokingColor(ink);
        }
        paint(fill >= 0, width >= 0, stream);
    }

    private void contour(PDPageContentStream stream) throws IOException {
        float width = in.readFloat();
        float ink = in.readFloat();
        segments(stream);
        stream.setLineCapStyle(1);
        stream.setLineJoinStyle(1);
        stream.setLineWidth(width);
        stream.setStrokingColor(ink);
        stream.stroke();
    }

    private void form(PDPage page, COSArray content) throws IOException {
        PDAppearanceStream form = new PDAppearanceStream(document);
        form.setBBox(new PDRectangle(in.readFloat(), in.readFloat()));
        form.setResources(new PDResources());
        OutputStream packed = form.getStream().createOutputStream(COSName.FLATE_DECODE);
        try (PDPageContentStream stream = new PDPageContentStream(document, form, packed)) {
            for (int next = in.readByte(); next != Recorded.FORM_END; next = in.readByte()) {
                step(next, page, content, stream);
            }
        }
        forms.add(form);
    }

    private void show(PDPageContentStream stream) throws IOException {
        PDFormXObject form = forms.get(in.readInt());
        stream.saveGraphicsState();
        stream.transform(Matrix.getTranslateInstance(in.readFloat(), in.readFloat()));
        stream.drawForm(form);
        stream.restoreGraphicsState();
    }

    private void segments(PDPageContentStream stream) throws IOException {
        int segments = in.readShort();
        for (int at = 0; at < segments; at++) {
            switch (in.readByte()) {
                case 1 -> stream.moveTo(in.readFloat(), in.readFloat());
                case 2 -> stream.lineTo(in.readFloat(), in.readFloat());
                default ->
                    stream.curveTo(
                            in.readFloat(),
                            in.readFloat(),
                            in.readFloat(),
                            in.readFloat(),
                            in.readFloat(),
                            in.readFloat());
            }
        }
    }

    private static void paint(boolean fill, boolean stroke, PDPageContentStream stream) throws IOException {
        if (fill && stroke) {
            stream.fillAndStroke();
        } else if (fill) {
            stream.fill();
        } else {
            stream.stroke();
        }
    }
}
