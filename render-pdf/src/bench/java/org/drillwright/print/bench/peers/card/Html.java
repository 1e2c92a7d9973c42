package org.drillwright.print.bench.peers.card;

import java.util.List;
import org.drillwright.print.frame.Role;

/** Cards as one XHTML page, for the two peers that read it. */
public final class Html {

    private static final String STYLE =
            """
            @page { size: 105mm 148mm; margin: 5mm }
            body { margin: 0; font-family: Card; font-size: 5.4pt; line-height: 1.17 }
            section { page-break-after: always }
            section:last-child { page-break-after: auto }
            h1 { font-size: 9pt; margin: 0 0 1pt 8mm }
            p { margin: 0 0 1pt 0 }
            table { width: 95mm; border-collapse: collapse; table-layout: fixed; margin: 2pt 0 }
            th, td { font-size: 6pt; text-align: left; vertical-align: top; padding: 1pt; border-bottom: 0.5pt solid #000 }
            th.head { font-size: 5pt; background: #000; color: #fff }
            """;

    private static final String FACE =
            """
            @font-face { font-family: Card; font-weight: %s; src: url(%s) }
            """;

    private static final List<Integer> WIDTHS = List.of(9, 24, 24, 14, 24);

    private final StringBuilder page = new StringBuilder();

    private Html() {}

    /** For a peer that is given its fonts apart. */
    public static String of(List<Part> cards) {
        return of(cards, "");
    }

    /** For a peer that is told in the page where its fonts lie. */
    public static String of(List<Part> cards, FontFiles fonts) {
        return of(
                cards,
                FACE.formatted("normal", fonts.regular().toUri())
                        + FACE.formatted("bold", fonts.bold().toUri()));
    }

    private static String of(List<Part> cards, String faces) {
        Html html = new Html();
        html.page
                .append("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\"><head>")
                .append("<meta charset=\"utf-8\"/><title>Cards</title>")
                .append("<meta name=\"description\" content=\"Cards\"/><style>\n")
                .append(faces)
                .append(STYLE)
                .append("</style></head><body>\n");
        cards.forEach(html::part);
        return html.page.append("</body></html>\n").toString();
    }

    private void part(Part part) {
        String tag = tag(part.role());
        page.append('<').append(tag).append(attributes(part.role())).append('>');
        if (part.role() == Role.TABLE) {
            page.append("<colgroup>");
            WIDTHS.forEach(width -> page.append("<col style=\"width: %dmm\"/>".formatted(width)));
            page.append("</colgroup>");
        }
        for (Run run : part.runs()) {
            String text = Xml.escaped(run.text());
            page.append(run.bold() && part.role() == Role.PARAGRAPH ? "<b>" + text + "</b>" : text);
        }
        part.parts().forEach(this::part);
        page.append("</").append(tag).append(">\n");
    }

    private static String attributes(Role role) {
        return switch (role) {
            case COLUMN_HEAD -> " scope=\"col\" class=\"head\"";
            case ROW_HEAD -> " scope=\"row\"";
            case CARD, TITLE, PARAGRAPH, LIST, ITEM, ITEM_NAME, ITEM_BODY, TABLE, ROW, CELL -> "";
        };
    }

    private static String tag(Role role) {
        return switch (role) {
            case CARD -> "section";
            case TITLE -> "h1";
            case PARAGRAPH -> "p";
            case LIST -> "dl";
            case ITEM -> "div";
            case ITEM_NAME -> "dt";
            case ITEM_BODY -> "dd";
            case TABLE -> "table";
            case ROW -> "tr";
            case COLUMN_HEAD, ROW_HEAD -> "th";
            case CELL -> "td";
        };
    }
}
