package org.drillwright.print;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.text.Typeface;

/** A frame's words, one behind the other, as who reads the card meets them. */
public final class Flat {

    private Flat() {}

    public static List<Node.Words> words(Frame frame) {
        List<Node.Words> words = new ArrayList<>();
        frame.content().forEach(node -> collect(node, words));
        return words;
    }

    public static List<Node.Figure> figures(Frame frame) {
        List<Node.Figure> figures = new ArrayList<>();
        frame.content().forEach(node -> figures(node, figures));
        return figures;
    }

    private static void figures(Node node, List<Node.Figure> into) {
        if (node instanceof Node.Group group) {
            group.parts().forEach(part -> figures(part, into));
        } else if (node instanceof Node.Figure figure) {
            into.add(figure);
        } else if (node instanceof Node.Placed placed) {
            placed.frame().content().forEach(inner -> figures(inner, into));
        }
    }

    private static void collect(Node node, List<Node.Words> into) {
        if (node instanceof Node.Group group) {
            group.parts().forEach(part -> collect(part, into));
        } else if (node instanceof Node.Words words) {
            into.add(words);
        } else if (node instanceof Node.Placed placed) {
            placed.frame().content().forEach(inner -> collect(inner, into));
        }
    }

    public static List<Mark.Text> texts(Frame frame) {
        return words(frame).stream().flatMap(words -> words.lines().stream()).toList();
    }

    /** All words without the spaces between, the hyphens of broken words and the places where they may be broken. */
    public static String letters(List<Frame> frames) {
        StringBuilder letters = new StringBuilder();
        frames.forEach(frame -> texts(frame).forEach(text -> letters.append(text.text())));
        return bare(letters.toString());
    }

    public static String bare(String text) {
        return text.replaceAll("[\\s\\u00A0\\u00AD\\u200B]+", "");
    }

    /** What a run covers: numerals and marks have neither accents nor tails. */
    public static Rectangle box(Mark.Text text) {
        Typeface face = Family.dejaVu().of(text.face());
        boolean numeral = text.text().matches("[0-9A-Z-]+");
        // No capital with an accent stands under a tail so deep that they would touch.
        double up = text.size() * (numeral ? face.capHeight() : 0.94 * face.ascent());
        double down = numeral ? 0 : text.size() * face.descent();
        double wide = face.width(text.text()) * text.size();
        return text.degrees() == 90
                ? new Rectangle(text.x() - up, text.baseline() - wide, up + down, wide)
                : new Rectangle(text.x(), text.baseline() - up, wide, up + down);
    }

    /** Whether two boxes share more than a hair's breadth, in points. */
    public static boolean overlap(Rectangle a, Rectangle b) {
        double hair = 0.02;
        return a.x() < b.right() - hair
                && b.x() < a.right() - hair
                && a.y() < b.bottom() - hair
                && b.y() < a.bottom() - hair;
    }
}
