package org.drillwright.print.pdf;

import java.io.IOException;
import java.util.Optional;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Segment;

/** Draws marks, turning a frame's y, which grows downwards, into the page's, which grows upwards. */
final class MarkPen {

    private static final String SOFT_HYPHEN = "\u00AD";

    private final Operators page;
    private final Fonts fonts;
    private final double height;

    MarkPen(Operators page, Fonts fonts, double height) {
        this.page = page;
        this.fonts = fonts;
        this.height = height;
    }

    /** Of the frame that is drawn. */
    double height() {
        return height;
    }

    void draw(Mark mark) throws IOException {
        if (mark instanceof Mark.Text text) {
            text(text, "");
        } else if (mark instanceof Mark.Line line) {
            line(line);
        } else if (mark instanceof Mark.Shape shape) {
            shape(shape);
        } else if (mark instanceof Mark.Contour contour) {
            contour(contour);
        } else if (mark instanceof Mark.Named named) {
            for (Mark part : named.marks()) {
                draw(part);
            }
        }
    }

    /** What is written behind a run so that whoever copies or hears the text gets whole words: a space, or nothing. */
    static String joint(Mark.Text run, Mark.Text next) {
        boolean sameLine = run.baseline() == next.baseline();
        return sameLine || run.text().endsWith(SOFT_HYPHEN) || endsInsideAWord(run.text()) ? "" : " ";
    }

    /** A line may end behind the hyphen of 'counter-riposte'; a dash that stands by itself has its spaces. */
    private static boolean endsInsideAWord(String line) {
        int last = line.length() - 1;
        return last > 0 && line.charAt(last) == '-' && Character.isLetterOrDigit(line.charAt(last - 1));
    }

    void text(Mark.Text text, String joint) throws IOException {
        page.op("BT");
        grey(text.ink(), true);
        place(text);
        boolean rightToLeft = text.span().rightToLeft();
        Kerned.show(text.text(), joint, rightToLeft, fonts.face(text.face()), text.size(), fonts, page);
        page.op("ET");
    }

    private void place(Mark.Text text) {
        double up = height - text.baseline();
        if (text.degrees() == 0) {
            page.numbers(text.x(), up).op("Td");
        } else {
            double angle = Math.toRadians(text.degrees());
            double cos = StrictMath.cos(angle);
            double sin = StrictMath.sin(angle);
            page.numbers(cos, sin, -sin, cos, text.x(), up).op("Tm");
        }
    }

    private void line(Mark.Line line) {
        page.number(line.width()).op("w");
        grey(line.ink(), false);
        page.numbers(line.x1(), height - line.y1()).op("m");
        page.numbers(line.x2(), height - line.y2()).op("l");
        page.op("S");
    }

    private void shape(Mark.Shape shape) {
        Optional<Ink> fill = shape.fill();
        fill.ifPresent(ink -> grey(ink, true));
        shape.stroke().ifPresent(stroke -> {
            page.number(stroke.width()).op("w");
            grey(stroke.ink(), false);
        });
        shape.outline().forEach(this::segment);
        page.op("h");
        page.op(painting(fill.isPresent(), shape.stroke().isPresent()));
    }

    /** Round joins and caps are set for this stroke alone. */
    private void contour(Mark.Contour contour) {
        page.op("1 j 1 J");
        page.number(contour.width()).op("w");
        grey(contour.ink(), false);
        contour.path().forEach(this::segment);
        page.op("S");
        page.op("0 j 0 J");
    }

    private static String painting(boolean fill, boolean stroke) {
        if (fill && stroke) {
            return "B";
        }
        return fill ? "f" : "S";
    }

    private void segment(Segment segment) {
        if (segment instanceof Segment.Start start) {
            page.numbers(start.x(), height - start.y()).op("m");
        } else if (segment instanceof Segment.To to) {
            page.numbers(to.x(), height - to.y()).op("l");
        } else if (segment instanceof Segment.Curve curve) {
            page.numbers(curve.x1(), height - curve.y1())
                    .numbers(curve.x2(), height - curve.y2())
                    .numbers(curve.x(), height - curve.y())
                    .op("c");
        }
    }

    private void grey(Ink ink, boolean inside) {
        page.number(ink.lightness()).op(inside ? "g" : "G");
    }
}
