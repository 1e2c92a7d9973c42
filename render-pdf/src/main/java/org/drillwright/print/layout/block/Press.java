package org.drillwright.print.layout.block;

import java.util.List;
import java.util.stream.Stream;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.fit.CardArea;
import org.drillwright.print.layout.fit.Columns;
import org.drillwright.print.layout.fit.Scale;
import org.drillwright.print.layout.words.CardText;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Typefaces;

/** Sets the pieces of one card at one scale. */
public record Press(CardArea area, Scale scale, Columns columns, Typefaces faces) {

    public static final Ink BAND = new Ink(0.88);

    public static Press of(CardText text, CardArea area, Scale scale, Typefaces faces) {
        return new Press(area, scale, Columns.of(text, area, scale, faces), faces);
    }

    Setting set(Paragraph words, double size, double x, double top, double width) {
        return Setting.of(faces, words, size, new Setting.Column(x, top, width));
    }

    Setting set(Paragraph words, double size, Columns.Span span, double top) {
        return set(words, size, span.x(), top, span.width());
    }

    /** Paragraphs across the card, one under the other. */
    public Slab paragraphs(List<Paragraph> paragraphs, double size, double between) {
        return Slab.stack(paragraphs.stream()
                .flatMap(words -> Stream.of(Slab.space(between), paragraph(words, size)))
                .toList());
    }

    private Slab paragraph(Paragraph words, double size) {
        Setting set = set(words, size, area.left(), 0, area.inner());
        return new Slab(set.height(), List.of(), List.of(new Node.Words(Role.PARAGRAPH, set.lines())), set.broken());
    }

    /** A rule across the card, centred in a gap. */
    public Slab rule(double gap, double width) {
        Mark rule = new Mark.Line(area.left(), gap / 2, area.right(), gap / 2, width, Ink.BLACK);
        return new Slab(gap, List.of(rule), List.of(), List.of());
    }
}
