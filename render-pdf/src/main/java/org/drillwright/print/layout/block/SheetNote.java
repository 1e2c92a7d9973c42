package org.drillwright.print.layout.block;

import java.util.List;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.page.Mirrored;
import org.drillwright.print.page.SetText;
import org.drillwright.print.page.Type;
import org.drillwright.print.text.Paragraph;
import org.drillwright.print.text.Typefaces;

/** What a sheet says of itself, outside the cards: print at 100 %, cut at the marks, how to measure the printer. */
public final class SheetNote {

    private static final double SIZE = 7;

    private static final double SIZE_OF_MEASURING = 10;

    /** Between the scales of a test sheet. */
    private static final double WIDTH = Millimetres.toPoints(100);

    private SheetNote() {}

    /** For sheets of cards, on one line. */
    public static Frame of(Labels labels, Typefaces faces) {
        Paragraph words = Paragraph.of(faces, Face.REGULAR, labels.text(Label.TRUE_SIZE));
        return set(words, SIZE, words.onOneLine() * SIZE, labels, faces);
    }

    /** For the front of the sheet by which a printer is measured. */
    public static Frame measuringFront(Labels labels, Typefaces faces) {
        return measuring(Label.MEASURE_FRONT, labels, faces);
    }

    /** For the back of the sheet by which a printer is measured. */
    public static Frame measuringBack(Labels labels, Typefaces faces) {
        return measuring(Label.MEASURE_BACK, labels, faces);
    }

    private static Frame measuring(Label label, Labels labels, Typefaces faces) {
        Paragraph words = Paragraph.of(faces, Face.REGULAR, labels.text(label));
        return set(words, SIZE_OF_MEASURING, WIDTH, labels, faces);
    }

    private static Frame set(Paragraph words, double size, double width, Labels labels, Typefaces faces) {
        SetText set = new Type(faces, size).set(words, 0, 0, width + 0.01);
        Frame note = new Frame(width, set.height(), 0, List.of(), List.of(set.as(Role.PARAGRAPH)));
        return Mirrored.pages(List.of(note), labels.language().locale(), faces).get(0);
    }
}
