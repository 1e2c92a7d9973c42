package org.drillwright.print.svg;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.text.Typefaces;

/**
 * Writes a frame as SVG. It has the frame's size in points and its coordinates; parts carry their roles by WAI-ARIA
 * (mapped for SVG by SVG-AAM), so that who hears the page hears a table as a table.
 */
public final class SvgWriter {

    private final Typefaces faces;
    private final Locale language;

    /** @param faces that the frame was laid with */
    public SvgWriter(Typefaces faces, Locale language) {
        this.faces = faces;
        this.language = language;
    }

    /** @param name what the whole is, for who cannot see it */
    public String write(Frame frame, String name) {
        Markup markup = new Markup();
        markup.tag("svg")
                .with("xmlns", "http://www.w3.org/2000/svg")
                .with("xml:lang", language.toLanguageTag())
                .with("xml:space", "preserve")
                .with("viewBox", "0 0 " + number(frame.width()) + " " + number(frame.height()))
                .with("width", number(frame.width()) + "pt")
                .with("height", number(frame.height()) + "pt")
                .with("role", "group")
                .with("aria-label", name)
                .inside();
        new Sketch(markup).draw(frame);
        return markup.end("svg").toString();
    }

    private static String number(double value) {
        return Markup.number(value, new StringBuilder());
    }

    /** One frame being written, and those inside it. */
    private final class Sketch {

        private final Markup markup;
        private final MarkSketch marks;

        /**
         * Pictures drawn so far, by the names under which they can be shown again. A name comes of what is drawn, for a
         * page may hold many frames, and what has one name in two of them must be one picture.
         */
        private final Map<List<Mark>, String> drawn = new HashMap<>();

        Sketch(Markup markup) {
            this.markup = markup;
            this.marks = new MarkSketch(markup, faces);
        }

        void draw(Frame frame) {
            markup.tag("g").with("aria-hidden", "true").inside();
            frame.backdrop().forEach(marks::draw);
            markup.end("g");
            frame.content().forEach(this::draw);
        }

        private void draw(Node node) {
            if (node instanceof Node.Group group) {
                markup.tag("g").with("role", role(group.role())).inside();
                group.parts().forEach(this::draw);
                markup.end("g");
            } else if (node instanceof Node.Words words) {
                words(words);
            } else if (node instanceof Node.Sign sign) {
                image(sign.said(), sign.marks());
            } else if (node instanceof Node.Figure figure) {
                markup.tag("g")
                        .with("role", "img")
                        .with("aria-label", figure.alternative())
                        .with(
                                "transform",
                                matrix(
                                        1,
                                        0,
                                        0,
                                        1,
                                        figure.box().x(),
                                        figure.box().y()))
                        .inside();
                picture(figure);
                markup.end("g");
            } else if (node instanceof Node.Placed placed) {
                markup.tag("g").with("transform", there(placed)).inside();
                draw(placed.frame());
                markup.end("g");
            }
        }

        /** Drawn where it stands first, shown again from there on. */
        private void picture(Node.Figure figure) {
            String known = drawn.get(figure.marks());
            if (known != null) {
                markup.tag("use").with("href", "#" + known).empty();
                return;
            }
            Markup inside = new Markup();
            MarkSketch sketch = new MarkSketch(inside, faces);
            figure.marks().forEach(sketch::draw);
            String picture = inside.toString();
            String name = "picture-" + picture.length() + "-" + Integer.toHexString(picture.hashCode());
            drawn.put(figure.marks(), name);
            markup.tag("g").with("id", name).inside().ready(picture).end("g");
        }

        private void image(String said, List<Mark> drawn) {
            markup.tag("g").with("role", "img").with("aria-label", said).inside();
            drawn.forEach(marks::draw);
            markup.end("g");
        }

        private void words(Node.Words words) {
            markup.tag("g").with("role", role(words.role()));
            if (words.role() == Role.TITLE) {
                markup.with("aria-level", "3");
            }
            markup.inside();
            words.lines().forEach(marks::text);
            markup.end("g");
        }
    }

    private static String role(Role role) {
        return switch (role) {
            case CARD -> "group";
            case TITLE -> "heading";
            case PARAGRAPH -> "paragraph";
            case LIST -> "list";
            case ITEM -> "listitem";
            case ITEM_NAME, ITEM_BODY -> "presentation";
            case TABLE -> "table";
            case ROW -> "row";
            case COLUMN_HEAD -> "columnheader";
            case ROW_HEAD -> "rowheader";
            case CELL -> "cell";
        };
    }

    /** From the placed frame's coordinates to those of the frame around it, both with y downwards. */
    private static String there(Node.Placed placed) {
        double x = placed.box().x();
        double y = placed.box().y();
        double right = placed.box().right();
        double bottom = placed.box().bottom();
        return switch (placed.top()) {
            case UP -> matrix(1, 0, 0, 1, x, y);
            case LEFT -> matrix(0, -1, 1, 0, x, bottom);
            case DOWN -> matrix(-1, 0, 0, -1, right, bottom);
            case RIGHT -> matrix(0, 1, -1, 0, right, y);
        };
    }

    private static String matrix(double... values) {
        List<String> numbers = Arrays.stream(values).mapToObj(SvgWriter::number).toList();
        return "matrix(" + String.join(" ", numbers) + ")";
    }
}
