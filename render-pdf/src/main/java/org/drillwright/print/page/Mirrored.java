package org.drillwright.print.page;

import java.util.List;
import java.util.Locale;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.Segment;
import org.drillwright.print.text.Typeface;
import org.drillwright.print.text.Typefaces;
import org.drillwright.wording.Direction;

/**
 * Cards and pages for words from right to left: all that stands at the left stands at the right. Pictures move and are not
 * turned round, for a fencer turned round has changed hands. What is mirrored twice is as it was.
 *
 * @param width of the paper, in points
 */
public record Mirrored(double width, Typefaces faces) {

    private static final double UPRIGHT = 90;

    private static final String ARROWS = "\u2190\u2192";

    /** Pages in a language as it is read: mirrored, or as they are. */
    public static List<Frame> pages(List<Frame> pages, Locale language, Typefaces faces) {
        return Direction.of(language).isRightToLeft()
                ? pages.stream().map(page -> of(page, faces)).toList()
                : pages;
    }

    /**
     * Marks of a drawing that is read like a line of words, such as a class along its time.
     *
     * @param width of the drawing, in points
     */
    public static List<Mark> marks(List<Mark> marks, double width, Locale language, Typefaces faces) {
        return Direction.of(language).isRightToLeft()
                ? marks.stream().map(new Mirrored(width, faces)::mark).toList()
                : marks;
    }

    public static Frame of(Frame card, Typefaces faces) {
        Mirrored mirror = new Mirrored(card.width(), faces);
        return new Frame(
                card.width(),
                card.height(),
                card.clear(),
                card.backdrop().stream().map(mirror::mark).toList(),
                card.content().stream().map(mirror::node).toList());
    }

    public Box box(Box box) {
        return Box.of(
                        box.height(),
                        box.marks().stream().map(this::mark).toList(),
                        box.nodes().stream().map(this::node).toList())
                .breaking(box.broken());
    }

    private Node node(Node node) {
        if (node instanceof Node.Group group) {
            return new Node.Group(
                    group.role(), group.parts().stream().map(this::node).toList());
        }
        if (node instanceof Node.Words words) {
            return new Node.Words(
                    words.role(), words.lines().stream().map(this::text).toList());
        }
        if (node instanceof Node.Sign sign) {
            return new Node.Sign(
                    sign.said(), sign.marks().stream().map(this::mark).toList());
        }
        if (node instanceof Node.Figure figure) {
            Rectangle box = figure.box();
            return new Node.Figure(
                    figure.alternative(),
                    new Rectangle(width - box.right(), box.y(), box.width(), box.height()),
                    figure.marks());
        }
        if (node instanceof Node.Anchor anchor) {
            return new Node.Anchor(anchor.name(), width - anchor.x(), anchor.y());
        }
        Node.Placed placed = (Node.Placed) node;
        return new Node.Placed(width - placed.box().right(), placed.y(), placed.top(), placed.frame());
    }

    /** A run that lies askew, a draft's mark, stays; one that stands upright is still read from below. */
    private Mark.Text text(Mark.Text run) {
        if (run.degrees() != 0 && run.degrees() != UPRIGHT) {
            return run;
        }
        Typeface face = faces.of(run.face());
        double x = run.degrees() == UPRIGHT
                ? width - run.x() + face.capHeight() * run.size()
                : width - run.x() - face.width(run.text()) * run.size();
        return new Mark.Text(
                x,
                run.baseline(),
                run.size(),
                run.face(),
                turned(run.text()),
                run.ink(),
                run.degrees(),
                run.span().rightToLeft(!run.span().rightToLeft()));
    }

    /** An arrow among words points the other way; no bracket needs it, as letters are set from the right (UAX 9). */
    private static String turned(String words) {
        return words.chars().noneMatch(letter -> ARROWS.indexOf(letter) >= 0)
                ? words
                : words.codePoints()
                        .map(letter -> ARROWS.indexOf(letter) < 0 ? letter : ARROWS.charAt(1 - ARROWS.indexOf(letter)))
                        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                        .toString();
    }

    private Mark mark(Mark mark) {
        if (mark instanceof Mark.Text text) {
            return text(text);
        }
        if (mark instanceof Mark.Line line) {
            return new Mark.Line(width - line.x1(), line.y1(), width - line.x2(), line.y2(), line.width(), line.ink());
        }
        if (mark instanceof Mark.Shape shape) {
            return new Mark.Shape(outline(shape.outline()), shape.fill(), shape.stroke());
        }
        if (mark instanceof Mark.Contour contour) {
            return new Mark.Contour(outline(contour.path()), contour.width(), contour.ink());
        }
        Mark.Named named = (Mark.Named) mark;
        return new Mark.Named(
                named.name(), named.marks().stream().map(this::mark).toList());
    }

    private List<Segment> outline(List<Segment> outline) {
        return outline.stream().map(this::segment).toList();
    }

    private Segment segment(Segment part) {
        if (part instanceof Segment.Start start) {
            return new Segment.Start(width - start.x(), start.y());
        }
        if (part instanceof Segment.To to) {
            return new Segment.To(width - to.x(), to.y());
        }
        Segment.Curve curve = (Segment.Curve) part;
        return new Segment.Curve(
                width - curve.x1(), curve.y1(), width - curve.x2(), curve.y2(), width - curve.x(), curve.y());
    }
}
