package org.drillwright.print.bench;

import java.io.BufferedOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.frame.Segment;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.text.Typeface;

/** Notes all that {@link PrintCards} shows, each thing at its fixed place: {@code RecordCards DRILLS FILE}. */
public final class RecordCards {

    private final DataOutputStream out;

    /** Pictures that were noted, each once, as the program writes each once. */
    private final Map<List<Mark>, Integer> forms = new HashMap<>();

    private double height;

    private RecordCards(DataOutputStream out) {
        this.out = out;
    }

    public static void main(String[] args) throws IOException {
        List<Frame> cards = PrintCards.lay(Integer.parseInt(args[0]));
        try (DataOutputStream out =
                new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(Path.of(args[1]))))) {
            RecordCards record = new RecordCards(out);
            for (Frame card : cards) {
                record.page(card);
            }
            out.writeByte(Recorded.END);
        }
    }

    private void page(Frame card) throws IOException {
        height = card.height();
        out.writeByte(Recorded.PAGE);
        floats(card.width(), card.height());
        out.writeByte(Recorded.ARTIFACT);
        marks(card.backdrop());
        out.writeByte(Recorded.MARKED_END);
        for (Node node : card.content()) {
            node(node);
        }
        out.writeByte(Recorded.PAGE_END);
    }

    private void node(Node node) throws IOException {
        if (node instanceof Node.Group group) {
            element(group.role());
            for (Node part : group.parts()) {
                node(part);
            }
            out.writeByte(Recorded.ELEMENT_END);
        } else if (node instanceof Node.Words words) {
            element(words.role());
            words(words.lines());
            out.writeByte(Recorded.ELEMENT_END);
        } else if (node instanceof Node.Sign sign) {
            out.writeByte(Recorded.ELEMENT);
            out.writeUTF("Span");
            out.writeUTF(sign.said());
            out.writeByte(Recorded.MARKED);
            marks(sign.marks());
            out.writeByte(Recorded.MARKED_END);
            out.writeByte(Recorded.ELEMENT_END);
        } else if (node instanceof Node.Figure figure) {
            figure(figure);
        } else {
            throw new IllegalStateException("a card by itself has no " + node);
        }
    }

    private void figure(Node.Figure figure) throws IOException {
        Integer form = forms.get(figure.marks());
        if (form == null) {
            form = forms.size();
            forms.put(figure.marks(), form);
            out.writeByte(Recorded.FORM);
            floats(figure.box().width(), figure.box().height());
            double page = height;
            height = figure.box().height();
            marks(figure.marks());
            height = page;
            out.writeByte(Recorded.FORM_END);
        }
        out.writeByte(Recorded.ELEMENT);
        out.writeUTF("Figure");
        out.writeUTF(figure.alternative());
        out.writeByte(Recorded.MARKED);
        out.writeByte(Recorded.SHOW);
        out.writeInt(form);
        floats(figure.box().x(), height - figure.box().bottom());
        out.writeByte(Recorded.MARKED_END);
        out.writeByte(Recorded.ELEMENT_END);
    }

    private void marks(List<Mark> marks) throws IOException {
        for (Mark mark : marks) {
            mark(mark, "");
        }
    }

    private void element(Role role) throws IOException {
        out.writeByte(Recorded.ELEMENT);
        out.writeUTF(Recorded.type(role));
        out.writeUTF(Recorded.scope(role));
    }

    private void words(List<Mark.Text> lines) throws IOException {
        if (lines.isEmpty()) {
            return;
        }
        out.writeByte(Recorded.MARKED);
        for (int at = 0; at < lines.size(); at++) {
            boolean goesOn = at == lines.size() - 1
                    || lines.get(at).baseline() == lines.get(at + 1).baseline()
                    || lines.get(at).text().endsWith("\u00AD")
                    || lines.get(at).text().endsWith("-");
            mark(lines.get(at), goesOn ? "" : " ");
        }
        out.writeByte(Recorded.MARKED_END);
    }

    private void mark(Mark mark, String joint) throws IOException {
        if (mark instanceof Mark.Text text) {
            text(text, joint);
        } else if (mark instanceof Mark.Line line) {
            out.writeByte(Recorded.LINE);
            floats(line.x1(), height - line.y1(), line.x2(), height - line.y2(), line.width());
            floats(line.ink().lightness());
        } else if (mark instanceof Mark.Shape shape) {
            shape(shape);
        } else if (mark instanceof Mark.Contour contour) {
            out.writeByte(Recorded.CONTOUR);
            floats(contour.width(), contour.ink().lightness());
            segments(contour.path());
        } else if (mark instanceof Mark.Named named) {
            marks(named.marks());
        }
    }

    private void shape(Mark.Shape shape) throws IOException {
        out.writeByte(Recorded.SHAPE);
        floats(shape.fill().map(Ink::lightness).orElse(-1.0));
        floats(shape.stroke().map(Mark.Stroke::width).orElse(-1.0));
        floats(shape.stroke().map(stroke -> stroke.ink().lightness()).orElse(-1.0));
        segments(shape.outline());
    }

    private void segments(List<Segment> segments) throws IOException {
        out.writeShort(segments.size());
        for (Segment segment : segments) {
            if (segment instanceof Segment.Start start) {
                out.writeByte(1);
                floats(start.x(), height - start.y());
            } else if (segment instanceof Segment.To to) {
                out.writeByte(2);
                floats(to.x(), height - to.y());
            } else if (segment instanceof Segment.Curve c) {
                out.writeByte(3);
                floats(c.x1(), height - c.y1(), c.x2(), height - c.y2(), c.x(), height - c.y());
            }
        }
    }

    private void text(Mark.Text text, String joint) throws IOException {
        out.writeByte(Recorded.TEXT);
        out.writeByte(text.face() == Face.BOLD ? 1 : 0);
        floats(
                text.size(),
                text.x(),
                height - text.baseline(),
                text.degrees(),
                text.ink().lightness());
        List<Object> pieces = Recorded.pieces(text.text() + joint, face(text.face()));
        out.writeShort(pieces.size());
        for (Object piece : pieces) {
            if (piece instanceof String letters) {
                out.writeUTF(letters);
            } else {
                out.writeFloat((Float) piece);
            }
        }
    }

    private static Typeface face(Face face) {
        return Family.dejaVu().of(face);
    }

    private void floats(double... values) throws IOException {
        for (double value : values) {
            out.writeFloat((float) value);
        }
    }
}
