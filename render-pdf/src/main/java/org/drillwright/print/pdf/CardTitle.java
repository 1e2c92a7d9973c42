package org.drillwright.print.pdf;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;

/**
 * What a card on a page is called.
 *
 * @param words empty if it has no title
 * @param y of the card's top, from the top of the page, in points
 */
record CardTitle(String words, double y) {

    /** Of all cards on a page, in reading order. */
    static List<CardTitle> on(Frame page) {
        List<CardTitle> titles = new ArrayList<>();
        page.content().forEach(node -> collect(node, 0, titles));
        return titles;
    }

    private static void collect(Node node, double y, List<CardTitle> into) {
        if (node instanceof Node.Placed placed) {
            placed.frame().content().forEach(inner -> collect(inner, placed.y(), into));
        } else if (node instanceof Node.Group group && group.role() == Role.CARD) {
            String title = group.parts().stream()
                    .filter(part -> part instanceof Node.Words words && words.role() == Role.TITLE)
                    .findFirst()
                    .map(words -> words((Node.Words) words))
                    .orElse("");
            into.add(new CardTitle(title, y));
        }
    }

    private static String words(Node.Words title) {
        StringBuilder words = new StringBuilder();
        List<Mark.Text> lines = title.lines();
        for (int at = 0; at < lines.size(); at++) {
            words.append(lines.get(at).text());
            if (at < lines.size() - 1) {
                words.append(MarkPen.joint(lines.get(at), lines.get(at + 1)));
            }
        }
        return words.toString().replace("\u00AD", "");
    }
}
