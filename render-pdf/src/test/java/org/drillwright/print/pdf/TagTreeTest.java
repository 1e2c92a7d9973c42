package org.drillwright.print.pdf;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.drillwright.model.CardSize;
import org.drillwright.print.Drills;
import org.junit.jupiter.api.Test;

/** The tree that a screen reader walks. */
class TagTreeTest {

    @Test
    void a_card_is_a_section_with_a_title_and_a_table() throws IOException {
        var drill =
                Drills.drill("one", "One", List.of(Drills.step("Lunge.", "Hold.", "lunge", "Arrive softly, please.")));
        try (PDDocument read = Loader.loadPDF(PdfWriterTest.pdf(PdfWriterTest.cards(CardSize.A6, drill)))) {
            StringBuilder tree = new StringBuilder();
            dump(read.getDocumentCatalog().getStructureTreeRoot(), 0, tree);
            assertEquals("""
                    Document
                      Sect
                        H1
                        P
                        L
                          LI
                            Lbl
                            LBody
                          LI
                            Lbl
                            LBody
                          LI
                            Lbl
                            LBody
                        Table
                          TR
                            TD
                            TH
                            TH
                            TH
                          TR
                            TH
                            TD
                              Span
                              P
                            TD
                              Span
                              P
                            TD
                              P
                              Span
                              P
                        L
                          LI
                            Lbl
                            LBody
                        P
                        Span
                        P
                        P
                        P
                        P
                    """, tree.toString());
        }
    }

    private static void dump(PDStructureNode node, int depth, StringBuilder into) {
        for (Object kid : node.getKids()) {
            if (kid instanceof PDStructureElement element) {
                into.append("  ".repeat(depth))
                        .append(element.getStructureType())
                        .append('\n');
                dump(element, depth + 1, into);
            }
        }
    }
}
