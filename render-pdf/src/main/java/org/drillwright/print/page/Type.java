package org.drillwright.print.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Role;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.TextLine;
import org.drillwright.print.text.Typeface;
import org.drillwright.print.text.Typefaces;

/**
 * Sets words at one size. Lengths are points; a column is told by its left edge, the top of its first line and its width.
 *
 * @param leading from baseline to baseline
 */
public record Type(Typefaces faces, double size, double leading) {

    /** Usual leading, as a share of the type size: accents of one line clear the tails of the line above. */
    public static final double LEADING = 1.17;

    public Type(Typefaces faces, double size) {
        this(faces, size, LEADING * size);
    }

    /** The size at which capitals are so high. */
    public static Type ofCapitals(Typefaces faces, double height) {
        return new Type(faces, height / faces.of(Face.REGULAR).capHeight());
    }

    public Type times(double factor) {
        return new Type(faces, factor * size, factor * leading);
    }

    public double width(Face face, String words) {
        return faces.of(face).width(words) * size;
    }

    /** Of the narrowest column that breaks no word. */
    public double widestWord(Face face, String words) {
        return words(face, words).widestWord() * size;
    }

    public double capHeight() {
        return faces.of(Face.REGULAR).capHeight() * size;
    }

    /** Of the first line of a column: what the leading leaves over letters and their tails is shared above and below. */
    public double baseline(double top) {
        Typeface face = faces.of(Face.REGULAR);
        double spare = leading - (face.ascent() + face.descent()) * size;
        return top + spare / 2 + face.ascent() * size;
    }

    private Paragraph words(Face face, String words) {
        return Paragraph.of(faces, face, words);
    }

    /** Words on one line, from a place on their baseline. */
    public Mark.Text line(Face face, String words, double x, double baseline) {
        return new Mark.Text(x, baseline, size, face, words, Ink.BLACK);
    }

    /** Running text. */
    public SetText set(Face face, String words, double x, double top, double width) {
        return set(words(face, words), x, top, width);
    }

    public SetText set(List<Styled> words, double x, double top, double width) {
        return set(Paragraph.of(faces, words), x, top, width);
    }

    public SetText set(Paragraph words, double x, double top, double width) {
        return set(words, words.lines(width / size), top, width, wide -> x);
    }

    /** Words that are taken in at a glance. */
    public SetText balanced(Paragraph words, double x, double top, double width) {
        return set(words, words.balanced(width / size), top, width, wide -> x);
    }

    /** The same, each line as near about a place as the column lets it. */
    public SetText about(double middle, Paragraph words, double x, double top, double width) {
        return set(
                words,
                words.balanced(width / size),
                top,
                width,
                wide -> Math.max(x, Math.min(middle - wide / 2, x + width - wide)));
    }

    /** @param left where a line so wide begins */
    private SetText set(Paragraph words, List<TextLine> lines, double top, double width, DoubleUnaryOperator left) {
        List<Mark.Text> marks = new ArrayList<>(4);
        double baseline = baseline(top);
        for (TextLine line : lines) {
            double x = left.applyAsDouble(line.width() * size);
            for (int at = 0; at < line.parts().size(); at++) {
                Styled part = line.parts().get(at);
                marks.add(new Mark.Text(x, baseline, size, part.face(), part.text(), Ink.BLACK, 0, part.span()));
                if (at < line.parts().size() - 1) {
                    x += width(part.face(), part.text());
                }
            }
            baseline += leading;
        }
        return new SetText(lines.size() * leading, marks, words.tooWide(width / size));
    }

    public Box title(String words, double width) {
        return box(Role.TITLE, set(Face.BOLD, words, 0, 0, width), 0.5);
    }

    public Box paragraph(Face face, String words, double width) {
        return box(Role.PARAGRAPH, set(face, words, 0, 0, width), 0.4);
    }

    public Box paragraph(List<Styled> words, double width) {
        return box(Role.PARAGRAPH, set(words, 0, 0, width), 0.4);
    }

    private Box box(Role role, SetText set, double below) {
        return set.lines().isEmpty() ? Box.NONE : Box.of(role, set).padded(below * size);
    }
}
