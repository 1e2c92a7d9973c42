package org.drillwright.print.impose;

import java.util.List;
import java.util.Optional;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Quarter;
import org.drillwright.print.frame.Rectangle;

/** Finds room on a sheet, outside of its cards, for what the sheet says of itself. */
record SheetNotePlace(Rectangle printable, Frame note) {

    /** Between the cards and the note. */
    private static final double BESIDE_NOTE = Millimetres.toPoints(1);

    /** Between the printable area's or a card's side and the note, past the marks for cutting. */
    private static final double PAST_MARKS = 2 * Imposition.MARGIN;

    /** Under the cards if there is room, or else where a card is missing. */
    Optional<Node> beside(List<Rectangle> cards) {
        double bottom = cards.stream().mapToDouble(Rectangle::bottom).max().orElse(0);
        Rectangle last = cards.get(cards.size() - 1);
        if (printable.bottom() - bottom >= note.height() + BESIDE_NOTE) {
            double x = Math.max(printable.x(), cards.get(0).x() + PAST_MARKS);
            return at(x, printable.bottom() - note.height());
        }
        if (printable.right() - last.right() >= note.width() + PAST_MARKS) {
            return at(last.right() + Imposition.MARGIN, last.y() + PAST_MARKS);
        }
        return Optional.empty();
    }

    private Optional<Node> at(double x, double y) {
        return Optional.of(new Node.Placed(x, y, Quarter.UP, note));
    }
}
