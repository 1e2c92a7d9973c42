package org.drillwright.print.impose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.CardSize;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Ink;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Backs are behind their fronts: the sheet is turned over as the printer turns it, point by point. */
class FoldedSheetTest {

    private static final double HAIR = 1e-6;
    private static final Stock A4 = Stock.millimetres(210, 297);
    private static final Frame NOTE = new Frame(150, 8, 0, List.of(), List.of());

    /** A point in points, from the top left corner. */
    private record Point(double x, double y) {}

    /** Where one sees a point of the back's page, looking through the paper from the front. */
    private static Point through(Point onBack, Duplex duplex, Stock stock) {
        return duplex == Duplex.LONG_EDGE
                ? new Point(stock.width() - onBack.x(), onBack.y())
                : new Point(onBack.x(), stock.height() - onBack.y());
    }

    /** Where a point of a card lies on the sheet. Written out corner by corner: a card's top may point four ways. */
    private static Point onSheet(Node.Placed card, Point inCard) {
        double width = card.frame().width();
        double height = card.frame().height();
        return switch (card.top()) {
            case UP -> new Point(card.x() + inCard.x(), card.y() + inCard.y());
            case LEFT -> new Point(card.x() + inCard.y(), card.y() + width - inCard.x());
            case DOWN -> new Point(card.x() + width - inCard.x(), card.y() + height - inCard.y());
            case RIGHT -> new Point(card.x() + height - inCard.y(), card.y() + inCard.x());
        };
    }

    private static List<Leaf> leaves(CardSize size, int count) {
        List<Leaf> leaves = new ArrayList<>();
        for (int at = 0; at < count; at++) {
            leaves.add(new Leaf(card(size, 2 * at), Optional.of(card(size, 2 * at + 1))));
        }
        return leaves;
    }

    /** Frames that differ, so that each back can be told: by a stroke of its own length. */
    private static Frame card(CardSize size, int number) {
        return new Frame(
                Millimetres.toPoints(size.width()),
                Millimetres.toPoints(size.height()),
                Millimetres.toPoints(5),
                List.of(new Mark.Line(20, 20, 21 + number, 20, 1, Ink.BLACK)),
                List.of());
    }

    private static List<Node.Placed> cards(Frame page) {
        return page.content().stream()
                .map(node -> (Node.Placed) node)
                .filter(placed -> !placed.frame().equals(NOTE))
                .toList();
    }

    /** Sizes and sheets with upright cards only, turned ones only, both in rows and both in columns. */
    @ParameterizedTest
    @CsvSource({
        "A6, 210, 297, LONG_EDGE, 11",
        "A6, 210, 297, SHORT_EDGE, 11",
        "A5, 210, 297, LONG_EDGE, 3",
        "A5, 210, 297, SHORT_EDGE, 3",
        "INDEX_4X6, 210, 297, LONG_EDGE, 8",
        "INDEX_4X6, 210, 297, SHORT_EDGE, 8",
        "INDEX_3X5, 215.9, 279.4, LONG_EDGE, 9",
        "INDEX_3X5, 215.9, 279.4, SHORT_EDGE, 9",
        "A7, 297, 420, LONG_EDGE, 18",
        "A7, 297, 420, SHORT_EDGE, 18",
        "INDEX_5X8, 215.9, 355.6, LONG_EDGE, 3",
        "INDEX_5X8, 215.9, 355.6, SHORT_EDGE, 3"
    })
    void each_back_is_exactly_behind_its_front(CardSize size, double width, double height, Duplex duplex, int count) {
        Stock stock = Stock.millimetres(width, height);
        List<Leaf> leaves = leaves(size, count);
        List<Frame> pages = Imposition.impose(leaves, SheetPlan.on(stock).with(duplex, Shift.NONE), NOTE);
        int seen = 0;
        for (int sheet = 0; sheet < pages.size(); sheet += 2) {
            List<Node.Placed> fronts = cards(pages.get(sheet));
            List<Node.Placed> backs = cards(pages.get(sheet + 1));
            assertEquals(fronts.size(), backs.size());
            for (int at = 0; at < fronts.size(); at++) {
                assertEquals(leaves.get(seen).front(), fronts.get(at).frame());
                assertEquals(
                        leaves.get(seen).back().orElseThrow(), backs.get(at).frame());
                behind(fronts.get(at), backs.get(at), duplex, stock);
                seen++;
            }
        }
        assertEquals(count, seen);
    }

    /** A page of a book: the top stays at the top, left of the front is behind right of the back. */
    private static void behind(Node.Placed front, Node.Placed back, Duplex duplex, Stock stock) {
        double width = front.frame().width();
        for (Point corner : List.of(new Point(0, 0), new Point(width, 0), new Point(30, 70))) {
            Point mirrored = new Point(width - corner.x(), corner.y());
            Point seen = through(onSheet(back, mirrored), duplex, stock);
            Point expected = onSheet(front, corner);
            assertEquals(expected.x(), seen.x(), HAIR);
            assertEquals(expected.y(), seen.y(), HAIR);
        }
    }

    @Test
    void a_leaf_without_a_back_has_an_empty_place_behind_it() {
        List<Leaf> leaves = new ArrayList<>(leaves(CardSize.A6, 3));
        leaves.set(0, Leaf.of(leaves.get(0).front()));
        List<Frame> pages = Imposition.impose(leaves, SheetPlan.on(A4).with(Duplex.LONG_EDGE, Shift.NONE), NOTE);
        assertEquals(2, pages.size());
        List<Node.Placed> backs = cards(pages.get(1));
        assertEquals(2, backs.size());
        behind(cards(pages.get(0)).get(1), backs.get(0), Duplex.LONG_EDGE, A4);
    }

    @Test
    void printed_on_one_side_a_back_follows_its_front() {
        List<Leaf> leaves = leaves(CardSize.A6, 2);
        List<Frame> pages = Imposition.impose(leaves, SheetPlan.on(A4), NOTE);
        assertEquals(1, pages.size());
        assertEquals(
                List.of(
                        leaves.get(0).front(),
                        leaves.get(0).back().orElseThrow(),
                        leaves.get(1).front(),
                        leaves.get(1).back().orElseThrow()),
                cards(pages.get(0)).stream().map(Node.Placed::frame).toList());
    }

    @Test
    void a_shift_moves_backs_and_nothing_else() {
        List<Leaf> leaves = leaves(CardSize.A6, 3);
        List<Frame> straight = Imposition.impose(leaves, SheetPlan.on(A4).with(Duplex.LONG_EDGE, Shift.NONE), NOTE);
        List<Frame> moved =
                Imposition.impose(leaves, SheetPlan.on(A4).with(Duplex.LONG_EDGE, new Shift(1.5, -0.5)), NOTE);
        assertEquals(straight.get(0), moved.get(0));
        for (int at = 0; at < 3; at++) {
            Node.Placed before = cards(straight.get(1)).get(at);
            Node.Placed after = cards(moved.get(1)).get(at);
            assertEquals(Millimetres.toPoints(1.5), after.x() - before.x(), HAIR);
            assertEquals(Millimetres.toPoints(-0.5), after.y() - before.y(), HAIR);
        }
    }

    @Test
    void a_shift_over_the_blank_edge_is_refused() {
        assertThrows(IllegalArgumentException.class, () -> new Shift(5.1, 0));
        assertThrows(IllegalArgumentException.class, () -> new Shift(0, Double.NaN));
    }

    /**
     * A printer that prints backs 1.2 mm too far to the right and 0.7 mm too high: what is read on the test sheet, held
     * against the light, is what puts them right.
     */
    @ParameterizedTest
    @EnumSource
    void the_shift_read_from_the_test_sheet_puts_backs_in_place(Duplex duplex) {
        double offX = 1.2;
        double offY = -0.7;
        List<Frame> pages = RegistrationSheet.pages(A4, duplex, Shift.NONE, NOTE, NOTE);
        Mark.Line acrossOnBack = (Mark.Line) pages.get(1).backdrop().get(0);
        Point middle = new Point((acrossOnBack.x1() + acrossOnBack.x2()) / 2, acrossOnBack.y1());
        Point printed = new Point(middle.x() + Millimetres.toPoints(offX), middle.y() + Millimetres.toPoints(offY));
        Point seen = through(printed, duplex, A4);
        Shift read = new Shift(scale(pages.get(0), true, seen), scale(pages.get(0), false, seen));
        assertEquals(-offX, read.x(), 0.01);
        assertEquals(-offY, read.y(), 0.01);
    }

    /** Reads a scale at a place as a person does: between two numerals, by proportion. */
    private static double scale(Frame front, boolean across, Point at) {
        List<Mark.Text> numerals = front.backdrop().stream()
                .filter(mark -> mark instanceof Mark.Text)
                .map(mark -> (Mark.Text) mark)
                .filter(text -> text.text().matches("\u2212?5"))
                .filter(text -> Math.abs(text.x() - at.x()) < 60 && Math.abs(text.baseline() - at.y()) < 60)
                .filter(text -> across == text.baseline() > at.y() + 30)
                .toList();
        assertEquals(2, numerals.size(), numerals::toString);
        Mark.Text low = numerals.get(numerals.get(0).text().length() == 2 ? 0 : 1);
        Mark.Text high = numerals.get(numerals.get(0).text().length() == 2 ? 1 : 0);
        double from = across ? low.x() : low.baseline();
        double to = across ? high.x() : high.baseline();
        // A numeral stands a little beside the middle of its tick; both of a scale by as much.
        double zero = (from + to) / 2;
        double place = (across ? at.x() : at.y()) - zero - (across ? 2 : -2);
        return 10 * place / (to - from);
    }

    @Test
    void the_test_sheets_five_crosses_are_behind_its_scales() {
        List<Frame> pages = RegistrationSheet.pages(A4, Duplex.SHORT_EDGE, Shift.NONE, NOTE, NOTE);
        assertEquals(10, pages.get(1).backdrop().size());
        assertTrue(pages.get(0).backdrop().size() > 5 * 22);
    }
}
