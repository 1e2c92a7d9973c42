package org.drillwright.print.svg;

import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Segment;
import org.drillwright.print.text.Typefaces;

/** Draws marks. Attributes only, no styles: a page that forbids inline styles shows them as they are. */
final class MarkSketch {

    /** The family that the page may define; the next best otherwise. */
    private static final String FAMILY = "Card, 'DejaVu Sans Condensed', sans-serif";

    private static final char SOFT_HYPHEN = '\u00AD';
    private static final int WHITE = 255;

    private final Markup markup;
    private final Typefaces faces;

    MarkSketch(Markup markup, Typefaces faces) {
        this.markup = markup;
        this.faces = faces;
    }

    void draw(Mark mark) {
        if (mark instanceof Mark.Text text) {
            text(text);
        } else if (mark instanceof Mark.Line line) {
            line(line);
        } else if (mark instanceof Mark.Shape shape) {
            shape(shape);
        } else if (mark instanceof Mark.Contour contour) {
            contour(contour);
        } else if (mark instanceof Mark.Named named) {
            markup.tag("g").with("data-mark", named.name()).inside();
            named.marks().forEach(this::draw);
            markup.end("g");
        }
    }

    /** Its length is stated, so that words end where they end on paper, whatever a browser makes of the font. */
    void text(Mark.Text text) {
        String shown = shown(text.text());
        markup.tag("text").with("x", text.x()).with("y", text.baseline());
        if (text.degrees() != 0) {
            markup.with("transform", turned(text));
        }
        markup.with("font-family", FAMILY).with("font-size", text.size());
        if (text.face() == Face.BOLD) {
            markup.with("font-weight", "bold");
        }
        text.span().language().ifPresent(language -> markup.with("lang", language.toLanguageTag()));
        if (text.span().rightToLeft()) {
            markup.with("direction", "rtl").with("text-anchor", "end");
        }
        double width = faces.of(text.face()).width(text.text()) * text.size();
        if (width > 0) {
            markup.with("textLength", width).with("lengthAdjust", "spacing");
        }
        markup.with("fill", grey(text.ink())).inside().words(shown).end("text");
    }

    /** A soft hyphen that ends a run is drawn, and a browser would hide it. */
    private static String shown(String text) {
        int last = text.length() - 1;
        return last >= 0 && text.charAt(last) == SOFT_HYPHEN ? text.substring(0, last) + "-" : text;
    }

    /** Frames turn against the clock, SVG with it. */
    private static String turned(Mark.Text text) {
        StringBuilder turned = new StringBuilder("rotate(");
        Markup.number(-text.degrees(), turned);
        Markup.number(text.x(), turned.append(' '));
        Markup.number(text.baseline(), turned.append(' '));
        return turned.append(')').toString();
    }

    private void line(Mark.Line line) {
        markup.tag("line")
                .with("x1", line.x1())
                .with("y1", line.y1())
                .with("x2", line.x2())
                .with("y2", line.y2())
                .with("stroke", grey(line.ink()))
                .with("stroke-width", line.width())
                .empty();
    }

    private void shape(Mark.Shape shape) {
        StringBuilder path = new StringBuilder();
        shape.outline().forEach(segment -> segment(segment, path));
        markup.tag("path")
                .with("d", path.append('Z').toString())
                .with("fill", shape.fill().map(MarkSketch::grey).orElse("none"));
        shape.stroke()
                .ifPresent(stroke -> markup.with("stroke", grey(stroke.ink())).with("stroke-width", stroke.width()));
        markup.empty();
    }

    private void contour(Mark.Contour contour) {
        StringBuilder path = new StringBuilder();
        contour.path().forEach(segment -> segment(segment, path));
        markup.tag("path")
                .with("d", path.toString().strip())
                .with("fill", "none")
                .with("stroke", grey(contour.ink()))
                .with("stroke-width", contour.width())
                .with("stroke-linejoin", "round")
                .with("stroke-linecap", "round")
                .empty();
    }

    private static void segment(Segment segment, StringBuilder path) {
        if (segment instanceof Segment.Start start) {
            numbers(path.append('M'), start.x(), start.y());
        } else if (segment instanceof Segment.To to) {
            numbers(path.append('L'), to.x(), to.y());
        } else if (segment instanceof Segment.Curve curve) {
            numbers(path.append('C'), curve.x1(), curve.y1(), curve.x2(), curve.y2(), curve.x(), curve.y());
        }
    }

    private static void numbers(StringBuilder path, double... numbers) {
        for (double number : numbers) {
            Markup.number(number, path);
            path.append(' ');
        }
    }

    private static String grey(Ink ink) {
        String level = String.valueOf(Math.round(ink.lightness() * WHITE));
        return "rgb(" + level + "," + level + "," + level + ")";
    }
}
