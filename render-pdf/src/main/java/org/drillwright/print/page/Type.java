package org.drillwright.print.page;

import java.util.List;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.SetText;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;

/**
 * Sets words at one size.
 *
 * @param size in points
 */
public record Type(Typefaces faces, double size) {

    /** For pages that are read at a desk: capitals of 2.6 mm fill 22 minutes of arc at 400 mm (ISO 9241-303: 20 to 22). */
    private static final double READING = 10.2;

    public static Type reading(Typefaces faces) {
        return new Type(faces, READING);
    }

    /** The size at which capitals are so high, in points. */
    public static Type ofCapitals(Typefaces faces, double height) {
        return new Type(faces, height / faces.of(Face.REGULAR).capHeight());
    }

    public Type times(double factor) {
        return new Type(faces, factor * size);
    }

    public double width(Face face, String words) {
        return faces.of(face).width(words) * size;
    }

    /** Of the narrowest column that breaks no word. */
    public double widestWord(Face face, String words) {
        return Paragraph.of(faces, face, words).widestWord() * size;
    }

    public double capHeight() {
        return faces.of(Face.REGULAR).capHeight() * size;
    }

    /** Words on one line, from a place on their baseline. */
    public Mark.Text line(Face face, String words, double x, double baseline) {
        return new Mark.Text(x, baseline, size, face, words, Ink.BLACK);
    }

    public SetText set(Face face, String words, double x, double top, double width) {
        return SetText.of(faces, Paragraph.of(faces, face, words), size, new SetText.Column(x, top, width));
    }

    public Block title(String words, double width) {
        return block(Role.TITLE, set(Face.BOLD, words, 0, 0, width), 0.5);
    }

    public Block paragraph(Face face, String words, double width) {
        return block(Role.PARAGRAPH, set(face, words, 0, 0, width), 0.4);
    }

    public Block paragraph(List<Styled> words, double width) {
        Paragraph all = Paragraph.of(faces, words);
        return block(Role.PARAGRAPH, SetText.of(faces, all, size, new SetText.Column(0, 0, width)), 0.4);
    }

    private Block block(Role role, SetText set, double below) {
        return set.lines().isEmpty()
                ? Block.NONE
                : new Block(set.height() + below * size, List.of(), List.of(new Node.Words(role, set.lines())));
    }
}
