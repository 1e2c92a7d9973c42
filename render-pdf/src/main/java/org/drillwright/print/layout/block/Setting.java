package org.drillwright.print.layout.block;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.TextLine;
import org.drillwright.print.text.Typefaces;

/**
 * Words set in a column.
 *
 * @param height of all lines, in points
 * @param broken words that were wider than the column
 */
public record Setting(double height, List<Mark.Text> lines, List<String> broken) {

    /** From baseline to baseline, as a share of the type size: accents of one line clear the tails of the line above. */
    public static final double LEADING = 1.17;

    public Setting {
        lines = List.copyOf(lines);
        broken = List.copyOf(broken);
    }

    static final Setting NONE = new Setting(0, List.of(), List.of());

    /** A column's place: its left edge, the top of its first line and its width, in points. */
    public record Column(double x, double top, double width) {}

    public static Setting of(Typefaces faces, Paragraph words, double size, Column column) {
        return of(faces, words, size, column, Ink.BLACK);
    }

    public static Setting of(Typefaces faces, Paragraph words, double size, Column column, Ink ink) {
        double measure = column.width() / size;
        List<Mark.Text> marks = new ArrayList<>(4);
        double baseline = column.top() + faces.of(Face.REGULAR).ascent() * size;
        List<TextLine> lines = words.lines(measure);
        for (TextLine line : lines) {
            double x = column.x();
            for (int at = 0; at < line.parts().size(); at++) {
                Styled part = line.parts().get(at);
                marks.add(new Mark.Text(x, baseline, size, part.face(), part.text(), ink));
                if (at < line.parts().size() - 1) {
                    x += faces.of(part.face()).width(part.text()) * size;
                }
            }
            baseline += LEADING * size;
        }
        return new Setting(lines.size() * LEADING * size, marks, words.tooWide(measure));
    }
}
