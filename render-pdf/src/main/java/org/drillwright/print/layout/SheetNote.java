package org.drillwright.print.layout;

import java.util.List;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.text.Typeface;
import org.drillwright.print.text.Typefaces;

/** What a sheet of cards says of itself, outside the cards: print at 100 %, cut at the marks. */
public final class SheetNote {

    private static final double SIZE = 7;

    private SheetNote() {}

    public static Frame of(Labels labels, Typefaces faces) {
        Typeface face = faces.of(Face.REGULAR);
        String words = labels.text(Label.TRUE_SIZE);
        Mark.Text line = new Mark.Text(0, face.ascent() * SIZE, SIZE, Face.REGULAR, words, Ink.BLACK);
        return new Frame(
                face.width(words) * SIZE,
                Setting.LEADING * SIZE,
                0,
                List.of(),
                List.of(new Node.Words(Role.PARAGRAPH, List.of(line))));
    }
}
