package org.drillwright.print.impose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.SheetSize;
import org.drillwright.print.frame.Box;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;

/**
 * Lays cards on sheets, at their true size and in their order, row by row. Printers leave a margin of up to 5 mm blank.
 * Cards may reach into it with their own blank edge, so that four A6 cards fill an A4 sheet; nothing is printed there.
 */
public final class Imposition {

    /** What common printers cannot reach; common practice, no source. */
    static final double MARGIN = Millimetres.toPoints(5);

    /** Between the cards and what is said about the sheet. */
    private static final double BESIDE_NOTE = Millimetres.toPoints(1);

    private final Arrangement arrangement;
    private final double width;
    private final double height;
    private final Frame note;

    private Imposition(Arrangement arrangement, SheetSize sheet, Frame note) {
        this.arrangement = arrangement;
        this.width = Millimetres.toPoints(sheet.width());
        this.height = Millimetres.toPoints(sheet.height());
        this.note = note;
    }

    /**
     * Lays cards on sheets.
     *
     * @param cards all of one size
     * @param note what each sheet says of itself, such as to print it at 100 %; it is left out where cards fill the
     *     sheet
     */
    public static List<Frame> impose(List<Frame> cards, SheetSize sheet, Frame note) {
        if (cards.isEmpty()) {
            return List.of();
        }
        Imposition imposition = new Imposition(arrangement(cards, sheet), sheet, note);
        int each = imposition.arrangement.places().size();
        List<Frame> sheets = new ArrayList<>();
        for (int start = 0; start < cards.size(); start += each) {
            sheets.add(imposition.sheet(cards.subList(start, Math.min(cards.size(), start + each))));
        }
        return sheets;
    }

    private static Arrangement arrangement(List<Frame> cards, SheetSize sheet) {
        Frame first = cards.get(0);
        if (cards.stream().anyMatch(card -> card.width() != first.width() || card.height() != first.height())) {
            throw new IllegalArgumentException("cards of several sizes do not share a sheet");
        }
        double overlap = Math.max(0, MARGIN - first.clear());
        Arrangement arrangement = Arrangement.of(
                first.width(),
                first.height(),
                Millimetres.toPoints(sheet.width()) - 2 * overlap,
                Millimetres.toPoints(sheet.height()) - 2 * overlap);
        if (arrangement.places().isEmpty()) {
            throw new IllegalArgumentException("a card of this size is larger than the sheet");
        }
        return arrangement.moved(overlap, overlap);
    }

    private Frame sheet(List<Frame> cards) {
        List<Box> boxes = new ArrayList<>();
        List<Node> content = new ArrayList<>();
        for (int at = 0; at < cards.size(); at++) {
            Arrangement.Place place = arrangement.places().get(at);
            boxes.add(place.box());
            content.add(new Node.Placed(place.box().x(), place.box().y(), place.turned(), cards.get(at)));
        }
        noteBeside(boxes).ifPresent(content::add);
        List<Mark> marks = new CropMarks(boxes, printable()).marks();
        return new Frame(width, height, MARGIN, marks, content);
    }

    private Box printable() {
        return new Box(MARGIN, MARGIN, width - 2 * MARGIN, height - 2 * MARGIN);
    }

    /** Under the cards if there is room, or else where a card is missing. */
    private Optional<Node> noteBeside(List<Box> cards) {
        double bottom = cards.stream().mapToDouble(Box::bottom).max().orElse(0);
        Box last = cards.get(cards.size() - 1);
        double row = last.y();
        if (printable().bottom() - bottom >= note.height() + BESIDE_NOTE) {
            double x = Math.max(printable().x(), cards.get(0).x() + 2 * MARGIN);
            return Optional.of(new Node.Placed(x, printable().bottom() - note.height(), false, note));
        }
        if (printable().right() - last.right() >= note.width() + 2 * MARGIN) {
            return Optional.of(new Node.Placed(last.right() + MARGIN, row + 2 * MARGIN, false, note));
        }
        return Optional.empty();
    }
}
