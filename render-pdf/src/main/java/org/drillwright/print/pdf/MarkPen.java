package org.drillwright.print.pdf;

import java.io.IOException;
import java.util.Optional;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.util.Matrix;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Segment;

/** Draws marks, turning a frame's y, which grows downwards, into the page's, which grows upwards. */
final class MarkPen {

    private static final String SOFT_HYPHEN = "\u00AD";

    private final PDPageContentStream stream;
    private final Fonts fonts;
    private final double height;

    MarkPen(PDPageContentStream stream, Fonts fonts, double height) {
        this.stream = stream;
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
        } else if (mark instanceof Mark.Named named) {
            for (Mark part : named.marks()) {
                draw(part);
            }
        }
    }

    /** What is written behind a run so that whoever copies or hears the text gets whole words: a space, or nothing. */
    static String joint(Mark.Text run, Mark.Text next) {
        boolean sameLine = run.baseline() == next.baseline();
        return sameLine || run.text().endsWith(SOFT_HYPHEN) ? "" : " ";
    }

    void text(Mark.Text text, String joint) throws IOException {
        stream.beginText();
        grey(text.ink(), true);
        stream.setFont(fonts.font(text.face()), (float) text.size());
        stream.setTextMatrix(Matrix.getRotateInstance(
                Math.toRadians(text.degrees()), (float) text.x(), (float) (height - text.baseline())));
        stream.showTextWithPositioning(Kerned.pieces(text.text() + joint, fonts.measures(text.face())));
        stream.endText();
    }

    private void line(Mark.Line line) throws IOException {
        stream.setLineWidth((float) line.width());
        grey(line.ink(), false);
        stream.moveTo((float) line.x1(), up(line.y1()));
        stream.lineTo((float) line.x2(), up(line.y2()));
        stream.stroke();
    }

    private void shape(Mark.Shape shape) throws IOException {
        for (Segment segment : shape.outline()) {
            segment(segment);
        }
        stream.closePath();
        Optional<Ink> fill = shape.fill();
        if (fill.isPresent()) {
            grey(fill.get(), true);
        }
        if (shape.stroke().isPresent()) {
            Mark.Stroke stroke = shape.stroke().get();
            stream.setLineWidth((float) stroke.width());
            grey(stroke.ink(), false);
        }
        paint(fill.isPresent(), shape.stroke().isPresent());
    }

    private void paint(boolean fill, boolean stroke) throws IOException {
        if (fill && stroke) {
            stream.fillAndStroke();
        } else if (fill) {
            stream.fill();
        } else {
            stream.stroke();
        }
    }

    private void segment(Segment segment) throws IOException {
        if (segment instanceof Segment.Start start) {
            stream.moveTo((float) start.x(), up(start.y()));
        } else if (segment instanceof Segment.To to) {
            stream.lineTo((float) to.x(), up(to.y()));
        } else if (segment instanceof Segment.Curve curve) {
            stream.curveTo(
                    (float) curve.x1(),
                    up(curve.y1()),
                    (float) curve.x2(),
                    up(curve.y2()),
                    (float) curve.x(),
                    up(curve.y()));
        }
    }

    private float up(double y) {
        return (float) (height - y);
    }

    private void grey(Ink ink, boolean inside) throws IOException {
        if (inside) {
            stream.setNonStrokingColor((float) ink.lightness());
        } else {
            stream.setStrokingColor((float) ink.lightness());
        }
    }
}
