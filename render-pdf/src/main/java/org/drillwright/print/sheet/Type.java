package org.drillwright.print.sheet;

import java.util.List;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Outline;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.block.Setting;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Styled;
import org.drillwright.print.text.Typefaces;

/** Sets words at one size. */
record Type(Typefaces faces, double size) {

    static final Ink BAND = new Ink(0.9);

    /** The size at which capitals are so high. */
    static Type ofCapitals(Typefaces faces, double height) {
        return new Type(faces, height / faces.of(Face.REGULAR).capHeight());
    }

    Type times(double factor) {
        return new Type(faces, factor * size);
    }

    double width(Face face, String words) {
        return faces.of(face).width(words) * size;
    }

    Setting set(Face face, String words, double x, double top, double width) {
        return set(List.of(new Styled(words, face)), x, top, width, Ink.BLACK);
    }

    Setting set(List<Styled> words, double x, double top, double width, Ink ink) {
        return Setting.of(faces, Paragraph.of(faces, words), size, new Setting.Column(x, top, width), ink);
    }

    Piece paragraph(Role role, Face face, String words, double width) {
        return piece(role, set(face, words, 0, 0, width), 0.35 * size);
    }

    /** An item behind a square. */
    Piece item(String words, double width) {
        double indent = 0.9 * size;
        double square = 0.34 * size;
        Setting set = set(Face.REGULAR, words, indent, 0, width - indent);
        double top = faces.of(Face.REGULAR).ascent() * size - 0.54 * size;
        Mark mark = Mark.Shape.filled(Outline.box(new Box(0, top, square, square)), Ink.BLACK);
        return new Piece(
                set.height() + 0.3 * size,
                List.of(mark),
                List.of(new Node.Words(Role.PARAGRAPH, set.lines())),
                set.broken().isEmpty());
    }

    private static Piece piece(Role role, Setting set, double below) {
        return new Piece(
                set.height() + below,
                List.of(),
                set.lines().isEmpty() ? List.of() : List.of(new Node.Words(role, set.lines())),
                set.broken().isEmpty());
    }
}
