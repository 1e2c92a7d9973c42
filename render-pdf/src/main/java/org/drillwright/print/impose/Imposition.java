package org.drillwright.print.impose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.SheetSize;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Quarter;
import org.drillwright.print.frame.Rectangle;

/**
 * Lays cards on sheets, at their true size and in their order, row by row. Printers leave a margin of some 4 mm blank.
 * Cards may reach into it with their own blank edge, so that four A6 cards fill an A4 sheet; nothing is printed there.
 */
public final class Imposition {

    /** What common printers cannot reach, 3 to 4.2 mm; common practice, no source. */
    static final double MARGIN = Millimetres.toPoints(4);

    private final SheetPlan plan;
    private final List<CardSlot> spots;
    private final SheetNotePlace notePlace;

    private Imposition(SheetPlan plan, List<CardSlot> spots, Frame note) {
        this.plan = plan;
        this.spots = List.copyOf(spots);
        this.notePlace = new SheetNotePlace(printable(plan.stock()), note);
    }

    /** Lays cards on sheets of which one side is printed. */
    public static List<Frame> impose(List<Frame> cards, SheetSize sheet, Frame note) {
        return impose(cards.stream().map(Leaf::of).toList(), SheetPlan.on(Stock.of(sheet)), note);
    }

    /**
     * Lays cards on sheets. With a duplex plan each front is followed by its back, blank or not; without one the back
     * of a card is laid as a card of its own behind its front, to be glued together.
     *
     * @param leaves all of one size
     * @param note what each sheet says of itself, such as to print it at 100 %; it is left out where cards fill the
     *     sheet
     */
    public static List<Frame> impose(List<Leaf> leaves, SheetPlan plan, Frame note) {
        if (leaves.isEmpty()) {
            return List.of();
        }
        Imposition imposition = new Imposition(plan, spots(sameSize(leaves), plan), note);
        return plan.duplex().isPresent() ? imposition.twoSided(leaves) : imposition.oneSided(leaves);
    }

    /** How many cards such as this one a sheet takes; 0 if the card is larger than the sheet. */
    public static int each(Frame card, SheetPlan plan) {
        return CardSlot.all(card, plan).size();
    }

    private static List<CardSlot> spots(Frame card, SheetPlan plan) {
        List<CardSlot> spots = CardSlot.all(card, plan);
        if (spots.isEmpty()) {
            throw new IllegalArgumentException("a card of this size is larger than the sheet");
        }
        return spots;
    }

    private static Frame sameSize(List<Leaf> leaves) {
        Frame first = leaves.get(0).front();
        if (leaves.stream().anyMatch(leaf -> !Leaf.sameSize(leaf.front(), first))) {
            throw new IllegalArgumentException("cards of several sizes do not share a sheet");
        }
        return first;
    }

    private List<Frame> oneSided(List<Leaf> leaves) {
        List<Frame> cards = new ArrayList<>();
        for (Leaf leaf : leaves) {
            cards.add(leaf.front());
            leaf.back().ifPresent(cards::add);
        }
        List<Frame> sheets = new ArrayList<>();
        for (int start = 0; start < cards.size(); start += spots.size()) {
            sheets.add(front(cards.subList(start, Math.min(cards.size(), start + spots.size()))));
        }
        return sheets;
    }

    private List<Frame> twoSided(List<Leaf> leaves) {
        List<Frame> pages = new ArrayList<>();
        for (int start = 0; start < leaves.size(); start += spots.size()) {
            List<Leaf> on = leaves.subList(start, Math.min(leaves.size(), start + spots.size()));
            pages.add(front(on.stream().map(Leaf::front).toList()));
            pages.add(back(on.stream().map(Leaf::back).toList(), plan.duplex().orElseThrow()));
        }
        return pages;
    }

    private Frame front(List<Frame> cards) {
        List<Rectangle> pieces = new ArrayList<>();
        List<Node> content = new ArrayList<>();
        for (int at = 0; at < cards.size(); at++) {
            CardSlot spot = spots.get(at);
            pieces.add(spot.card());
            content.add(new Node.Placed(spot.card().x(), spot.card().y(), spot.top(), cards.get(at)));
        }
        notePlace.beside(pieces).ifPresent(content::add);
        return page(marks(pieces), content);
    }

    /** Marks for cutting stand on fronts only: two that do not quite meet would leave open which of them holds. */
    private Frame back(List<Optional<Frame>> backs, Duplex duplex) {
        List<Node> content = new ArrayList<>();
        for (int at = 0; at < backs.size(); at++) {
            Rectangle behind = duplex.behind(spots.get(at).card(), plan.stock())
                    .moved(plan.shift().right(), plan.shift().down());
            Quarter top = duplex.behind(spots.get(at).top());
            backs.get(at).ifPresent(back -> content.add(new Node.Placed(behind.x(), behind.y(), top, back)));
        }
        return page(List.of(), content);
    }

    private Frame page(List<Mark> marks, List<Node> content) {
        return new Frame(plan.stock().width(), plan.stock().height(), MARGIN, marks, content);
    }

    private List<Mark> marks(List<Rectangle> pieces) {
        Rectangle printable = printable(plan.stock());
        List<Mark> marks = new ArrayList<>(new CropMarks(pieces, printable, plan.overrun()).marks());
        if (plan.laminate().roundsCorners()) {
            marks.addAll(new CornerGuides(printable).marks(pieces));
        }
        return marks;
    }

    private static Rectangle printable(Stock stock) {
        return new Rectangle(MARGIN, MARGIN, stock.width() - 2 * MARGIN, stock.height() - 2 * MARGIN);
    }
}
