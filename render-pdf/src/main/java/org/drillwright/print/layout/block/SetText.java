package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.layout.fit.TypeSize;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.TextLine;
import org.drillwright.print.text.Typeface;
import org.drillwright.print.text.Typefaces;

/**
 * Words set in a column.
 *
 * @param height of all lines, in points
 * @param broken words that were wider than the column
 */
public record SetText(double height, List<Mark.Text> lines, List<String> broken) {

    /** From baseline to baseline, as a share of the type size: accents of one line clear the tails of the line above. */
    public static final double LEADING = 1.17;

    public SetText {
        lines = List.copyOf(lines);
        broken = List.copyOf(broken);
    }

    /** A column's place: its left edge, the top of its first line and its width, in points. */
    public record Column(double x, double top, double width) {}

    public static SetText of(Typefaces faces, Paragraph words, double size, Column column) {
        return of(faces, words, size, column, Ink.BLACK);
    }

    public static SetText of(Typefaces faces, Paragraph words, double size, Column column, Ink ink) {
        List<TextLine> lines = words.lines(column.width() / size);
        return set(faces, words, lines, new TypeSize(size, LEADING * size), column, ink, wide -> column.x());
    }

    /** Words that are taken in at a glance. */
    static SetText balanced(Typefaces faces, Paragraph words, TypeSize type, Column column) {
        return set(
                faces,
                words,
                words.balanced(column.width() / type.size()),
                type,
                column,
                Ink.BLACK,
                wide -> column.x());
    }

    /** Running text. */
    static SetText running(Typefaces faces, Paragraph words, TypeSize type, Column column) {
        return set(
                faces, words, words.lines(column.width() / type.size()), type, column, Ink.BLACK, wide -> column.x());
    }

    /** Each line in the middle of the column. */
    static SetText centred(Typefaces faces, Paragraph words, TypeSize type, Column column) {
        return about(faces, words, type, column, column.x() + column.width() / 2);
    }

    /** Each line as near about a place as the column lets it, in points from the left. */
    static SetText about(Typefaces faces, Paragraph words, TypeSize type, Column column, double middle) {
        return set(
                faces,
                words,
                words.balanced(column.width() / type.size()),
                type,
                column,
                Ink.BLACK,
                wide -> Math.max(column.x(), Math.min(middle - wide / 2, column.x() + column.width() - wide)));
    }

    /** @param left where a line so wide begins, both in points */
    private static SetText set(
            Typefaces faces,
            Paragraph words,
            List<TextLine> lines,
            TypeSize type,
            Column column,
            Ink ink,
            DoubleUnaryOperator left) {
        double size = type.size();
        List<Mark.Text> marks = new ArrayList<>(4);
        double baseline = baseline(faces, type, column.top());
        for (TextLine line : lines) {
            double x = left.applyAsDouble(line.width() * size);
            for (int at = 0; at < line.parts().size(); at++) {
                Styled part = line.parts().get(at);
                marks.add(new Mark.Text(x, baseline, size, part.face(), part.text(), ink, 0, part.span()));
                if (at < line.parts().size() - 1) {
                    x += faces.of(part.face()).width(part.text()) * size;
                }
            }
            baseline += type.leading();
        }
        return new SetText(lines.size() * type.leading(), marks, words.tooWide(column.width() / size));
    }

    /** Of the first line of a column: what the leading leaves over letters and their tails is shared above and below. */
    static double baseline(Typefaces faces, TypeSize type, double top) {
        Typeface face = faces.of(Face.REGULAR);
        double spare = type.leading() - (face.ascent() + face.descent()) * type.size();
        return top + spare / 2 + face.ascent() * type.size();
    }
}
