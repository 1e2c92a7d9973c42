package org.drillwright.print.bench.peers.card;

import java.util.List;
import org.drillwright.print.frame.Role;

/** Cards as formatting objects (XSL 1.1), one page sequence for all. */
public final class Fo {

    private static final String HEAD =
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <fo:root xmlns:fo="http://www.w3.org/1999/XSL/Format" xml:lang="en" font-family="Card" font-size="5.4pt" line-height="1.17">
            <fo:layout-master-set><fo:simple-page-master master-name="card" page-width="105mm" page-height="148mm" margin="5mm">
            <fo:region-body/></fo:simple-page-master></fo:layout-master-set>
            <fo:declarations><x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
            <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:title>Cards</dc:title></rdf:Description>
            </rdf:RDF></x:xmpmeta></fo:declarations>
            <fo:page-sequence master-reference="card"><fo:flow flow-name="xsl-region-body">
            """;

    private static final String COLUMNS =
            """
            <fo:table-column column-width="9mm"/><fo:table-column column-width="24mm"/><fo:table-column column-width="24mm"/>\
            <fo:table-column column-width="14mm"/><fo:table-column column-width="24mm"/>
            """;

    private static final String CELL =
            "<fo:table-cell padding=\"1pt\" border-bottom=\"0.5pt solid #000\"%s><fo:block font-size=\"%s\"%s>";

    private final StringBuilder page = new StringBuilder(HEAD);

    private Fo() {}

    public static String of(List<Part> cards) {
        Fo fo = new Fo();
        for (int at = 0; at < cards.size(); at++) {
            fo.page.append(at == 0 ? "<fo:block>" : "<fo:block break-before=\"page\">");
            cards.get(at).parts().forEach(fo::part);
            fo.page.append("</fo:block>\n");
        }
        return fo.page.append("</fo:flow></fo:page-sequence></fo:root>\n").toString();
    }

    private void part(Part part) {
        switch (part.role()) {
            case TITLE ->
                words(
                        part,
                        "<fo:block role=\"H1\" font-size=\"9pt\" font-weight=\"bold\" margin-left=\"8mm\">",
                        "</fo:block>");
            case PARAGRAPH -> words(part, "<fo:block space-after=\"1pt\">", "</fo:block>");
            case TABLE -> table(part);
            default -> throw new IllegalStateException("no " + part.role() + " outside a table");
        }
    }

    private void table(Part table) {
        page.append("<fo:table table-layout=\"fixed\" width=\"95mm\" space-before=\"2pt\" space-after=\"2pt\">")
                .append(COLUMNS);
        page.append("<fo:table-header>");
        row(table.parts().get(0));
        page.append("</fo:table-header><fo:table-body>");
        table.parts().subList(1, table.parts().size()).forEach(this::row);
        page.append("</fo:table-body></fo:table>\n");
    }

    private void row(Part row) {
        page.append("<fo:table-row>");
        for (Part cell : row.parts()) {
            String open =
                    switch (cell.role()) {
                        case COLUMN_HEAD ->
                            CELL.formatted(" background-color=\"#000\"", "5pt", " color=\"#fff\" font-weight=\"bold\"");
                        case ROW_HEAD -> CELL.formatted(" role=\"TH\"", "6pt", " font-weight=\"bold\"");
                        default -> CELL.formatted("", "6pt", "");
                    };
            words(cell, open, "</fo:block></fo:table-cell>");
        }
        page.append("</fo:table-row>\n");
    }

    private void words(Part part, String open, String close) {
        page.append(open);
        for (Run run : part.runs()) {
            String text = Xml.escaped(run.text());
            boolean bold = run.bold() && part.role() == Role.PARAGRAPH;
            page.append(bold ? "<fo:inline font-weight=\"bold\">" + text + "</fo:inline>" : text);
        }
        page.append(close);
    }
}
