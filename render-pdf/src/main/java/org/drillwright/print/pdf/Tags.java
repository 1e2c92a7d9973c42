package org.drillwright.print.pdf;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDObjectReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDLayoutAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.PDTableAttributeObject;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.Role;
import org.drillwright.print.frame.RunRole;
import org.drillwright.wording.Direction;

/** The document's tree of meaning, grown page by page. */
final class Tags {

    private static final COSName TAB_ORDER = COSName.getPDFName("Tabs");
    private static final COSName BY_STRUCTURE = COSName.getPDFName("S");

    private final PDStructureTreeRoot tree = new PDStructureTreeRoot();
    private final PDStructureElement root = new PDStructureElement(StandardStructureTypes.DOCUMENT, tree);
    private final Map<Integer, PDParentTreeValue> parents = new TreeMap<>();
    private final Links links = new Links();

    /** @param direction in which lines and tables are read (ISO 32000-1, 14.8.5.4.3: WritingMode) */
    Tags(PDDocument document, Direction direction) {
        document.getDocumentCatalog().setStructureTreeRoot(tree);
        tree.appendKid(root);
        if (direction.isRightToLeft()) {
            PDLayoutAttributeObject read = new PDLayoutAttributeObject();
            read.setWritingMode(PDLayoutAttributeObject.WRITING_MODE_RLTB);
            root.addAttribute(read);
        }
    }

    Page page(PDPage page) {
        int number = parents.size();
        page.setStructParents(number);
        page.getCOSObject().setItem(TAB_ORDER, BY_STRUCTURE);
        COSArray content = new COSArray();
        parents.put(number, new PDParentTreeValue(content));
        return new Page(page, content);
    }

    /** Puts cards in the order of reading, and writes down which part each piece of content belongs to. */
    void finish(Contents contents) {
        links.finish();
        if (root.getCOSObject().getDictionaryObject(COSName.K) instanceof COSArray cards) {
            COSArray read = new COSArray();
            contents.read(cards.toList()).forEach(read::add);
            root.getCOSObject().setItem(COSName.K, read);
        }
        PDNumberTreeNode byPage = new PDNumberTreeNode(PDParentTreeValue.class);
        byPage.setNumbers(parents);
        tree.setParentTree(byPage);
        tree.setParentTreeNextKey(parents.size());
    }

    /** Tags for what one page shows. */
    final class Page {

        private final PDPage page;
        private final COSArray content;

        private Page(PDPage page, COSArray content) {
            this.page = page;
            this.content = content;
        }

        PDStructureElement root() {
            return root;
        }

        PDStructureElement element(Role role, PDStructureElement parent) {
            PDStructureElement element = element(type(role), parent);
            scope(role).ifPresent(scope -> {
                PDTableAttributeObject table = new PDTableAttributeObject();
                table.setScope(scope);
                element.addAttribute(table);
            });
            return element;
        }

        PDStructureElement figure(String alternative, Rectangle box, PDStructureElement parent) {
            PDStructureElement element = element(StandardStructureTypes.Figure, parent);
            element.setAlternateDescription(alternative);
            PDLayoutAttributeObject place = new PDLayoutAttributeObject();
            place.setBBox(new PDRectangle((float) box.x(), (float) box.y(), (float) box.width(), (float) box.height()));
            place.setPlacement(PDLayoutAttributeObject.PLACEMENT_BLOCK);
            element.addAttribute(place);
            return element;
        }

        PDStructureElement sign(String said, PDStructureElement parent) {
            PDStructureElement element = element(StandardStructureTypes.SPAN, parent);
            element.setActualText(said);
            return element;
        }

        /** Words in another language, or that lead somewhere, each line of them in its box on the page. */
        PDStructureElement span(RunRole span, String words, List<Rectangle> lines, PDStructureElement parent)
                throws IOException {
            String type = span.to().isPresent() ? StandardStructureTypes.LINK : StandardStructureTypes.SPAN;
            PDStructureElement element = element(type, parent);
            span.language().ifPresent(language -> element.setLanguage(language.toLanguageTag()));
            if (span.to().isPresent()) {
                PDAnnotationLink area = links.area(span.to().get(), words, page, lines);
                area.setStructParent(parents.size());
                parents.put(parents.size(), new PDParentTreeValue(element.getCOSObject()));
                PDObjectReference reference = new PDObjectReference();
                reference.setReferencedObject(area);
                element.appendKid(reference);
            }
            return element;
        }

        /** A place that words lead to, in points from the bottom left of the page. */
        void anchor(String name, double x, double y) {
            links.place(name, page, x, y);
        }

        /** The number of a new piece of content that belongs to an element. */
        int content(PDStructureElement element) {
            int number = content.size();
            content.add(element.getCOSObject());
            element.appendKid(number);
            return number;
        }

        private PDStructureElement element(String type, PDStructureElement parent) {
            PDStructureElement element = new PDStructureElement(type, parent);
            element.setPage(page);
            parent.appendKid(element);
            return element;
        }
    }

    private static Optional<String> scope(Role role) {
        return switch (role) {
            case COLUMN_HEAD -> Optional.of(PDTableAttributeObject.SCOPE_COLUMN);
            case ROW_HEAD -> Optional.of(PDTableAttributeObject.SCOPE_ROW);
            case CARD, TITLE, PARAGRAPH, LIST, ITEM, ITEM_NAME, ITEM_BODY, TABLE, ROW, CELL -> Optional.empty();
        };
    }

    private static String type(Role role) {
        return switch (role) {
            case CARD -> StandardStructureTypes.SECT;
            case TITLE -> StandardStructureTypes.H1;
            case PARAGRAPH -> StandardStructureTypes.P;
            case LIST -> StandardStructureTypes.L;
            case ITEM -> StandardStructureTypes.LI;
            case ITEM_NAME -> StandardStructureTypes.LBL;
            case ITEM_BODY -> StandardStructureTypes.L_BODY;
            case TABLE -> StandardStructureTypes.TABLE;
            case ROW -> StandardStructureTypes.TR;
            case COLUMN_HEAD, ROW_HEAD -> StandardStructureTypes.TH;
            case CELL -> StandardStructureTypes.TD;
        };
    }
}
