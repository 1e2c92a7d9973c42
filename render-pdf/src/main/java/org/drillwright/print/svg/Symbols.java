package org.drillwright.print.svg;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.text.Typefaces;

/**
 * Pictures for a page that shows many, some of them more than once: each drawing stands in the page one time, and where
 * it is seen it is called by name.
 */
public final class Symbols {

    /** To a point: a tenth of what a phone's screen can show of a picture as wide as the screen. */
    private static final double UNITS = 30;

    private static final int WHITE = 255;

    private final Typefaces faces;
    private final Map<String, String> names = new LinkedHashMap<>();

    /** @param faces that the pictures' words were measured with */
    public Symbols(Typefaces faces) {
        this.faces = faces;
    }

    /** The picture where it is seen; it fills the width that the page's styles give to its class. */
    public String picture(Node.Figure figure, String style) {
        Markup markup = seen(figure.box(), figure.marks());
        markup.with("class", style).with("role", "img").with("aria-label", figure.alternative());
        return called(markup, figure.box(), figure.marks());
    }

    /** A sign that says nothing that the words beside it do not say. */
    public String sign(Box box, List<Mark> marks, String style) {
        Markup markup = seen(box, marks).with("class", style).with("aria-hidden", "true");
        return called(markup, box, marks);
    }

    /** All drawings, to stand once anywhere in the page. */
    public String drawings() {
        StringBuilder all =
                new StringBuilder("<svg class=\"drawings\" aria-hidden=\"true\" width=\"0\" height=\"0\">\n");
        names.forEach((drawing, name) -> all.append("<symbol id=\"")
                .append(name)
                .append("\" overflow=\"visible\">")
                .append(drawing)
                .append("</symbol>\n"));
        return all.append("</svg>").toString();
    }

    private Markup seen(Box box, List<Mark> marks) {
        return new Markup()
                .tag("svg")
                .with(
                        "viewBox",
                        units(box.x()) + " " + units(box.y()) + " " + units(box.width()) + " " + units(box.height()));
    }

    private String called(Markup markup, Box box, List<Mark> marks) {
        return markup.inside().toString() + "<use href=\"#" + name(marks) + "\"/></svg>";
    }

    private String name(List<Mark> marks) {
        StringBuilder drawing = new StringBuilder();
        marks.forEach(mark -> draw(mark, drawing));
        return names.computeIfAbsent(drawing.toString(), fresh -> "drawing-" + (names.size() + 1));
    }

    private void draw(Mark mark, StringBuilder into) {
        if (mark instanceof Mark.Shape shape) {
            shape(shape, into);
        } else if (mark instanceof Mark.Line line) {
            line(line, into);
        } else if (mark instanceof Mark.Named named) {
            named.marks().forEach(one -> draw(one, into));
        } else if (mark instanceof Mark.Text text) {
            Markup words = new Markup();
            new MarkSketch(words, faces).text(text);
            into.append("<g transform=\"scale(")
                    .append(units(1))
                    .append(")\">")
                    .append(words)
                    .append("</g>");
        }
    }

    private static void shape(Mark.Shape shape, StringBuilder into) {
        into.append("<path d=\"").append(Path.of(shape.outline(), UNITS)).append('"');
        String fill = shape.fill().map(Symbols::colour).orElse("none");
        if (!fill.equals("#000")) {
            into.append(" fill=\"").append(fill).append('"');
        }
        shape.stroke().ifPresent(stroke -> stroke(stroke.width(), stroke.ink(), into));
        into.append("/>");
    }

    private static void line(Mark.Line line, StringBuilder into) {
        into.append("<path d=\"M").append(units(line.x1())).append(' ').append(units(line.y1()));
        into.append('L')
                .append(units(line.x2()))
                .append(' ')
                .append(units(line.y2()))
                .append('"');
        stroke(line.width(), line.ink(), into);
        into.append("/>");
    }

    private static void stroke(double width, Ink ink, StringBuilder into) {
        into.append(" stroke=\"")
                .append(colour(ink))
                .append("\" stroke-width=\"")
                .append(units(width))
                .append('"');
    }

    private static String colour(Ink ink) {
        long level = Math.round(ink.lightness() * WHITE);
        if (level == 0) {
            return "#000";
        }
        return level == WHITE ? "#fff" : "rgb(" + level + "," + level + "," + level + ")";
    }

    private static long units(double points) {
        return Math.round(points * UNITS);
    }
}
