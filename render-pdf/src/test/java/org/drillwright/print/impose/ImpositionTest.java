package org.drillwright.print.impose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.drillwright.model.CardSize;
import org.drillwright.model.SheetSize;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ImpositionTest {

    private static final Frame NOTE = new Frame(150, 8, 0, List.of(), List.of());

    private static Frame card(CardSize size, double clear) {
        return new Frame(
                Millimetres.toPoints(size.width()), Millimetres.toPoints(size.height()), clear, List.of(), List.of());
    }

    private static List<Frame> sheets(CardSize size, int cards, SheetSize sheet) {
        return Imposition.impose(Collections.nCopies(cards, card(size, Imposition.MARGIN)), sheet, NOTE);
    }

    private static List<Node.Placed> placed(Frame sheet) {
        return sheet.content().stream().map(node -> (Node.Placed) node).toList();
    }

    private static List<Node.Placed> cards(Frame sheet) {
        return placed(sheet).stream().filter(node -> !node.frame().equals(NOTE)).toList();
    }

    /**
     * By hand, in millimetres. A6 on A4: 2 x 105 = 210, 2 x 148 = 296 of 297. A6 on Letter: 2 x 105 = 210 of 215.9; one
     * row of 148 leaves 131.4 of 279.4, which takes one of 148 x 105 on its side. A5 on A4: on its side 210 wide, 2 x
     * 148 = 296. A5 on Letter: 148 + 148 or 210 + 148 are more than either side's 215.9 or 279.4. 4x6 on A4: 2 x 101.6 =
     * 203.2 of 210; one row of 152.4 leaves 144.6, which takes one of 152.4 x 101.6. 4x6 on Letter: one row of two
     * leaves 127, which takes one. A7 on A4: on its side 2 x 105 = 210, 4 x 74 = 296. 3x5 on A4: a column of two upright,
     * 254 of 297, leaves 133.8, which takes three on their sides, 127 wide and 228.6 high; on Letter 139.7 are left. 5x8
     * on A4 and Letter: on its side 203.2, 2 x 127 = 254. Quarter and half Letter on Letter: four and two,
     * with nothing left. Wall A4 on A4: itself.
     */
    @ParameterizedTest
    @CsvSource({
        "A6, A4, 4",
        "A6, LETTER, 3",
        "A5, A4, 2",
        "A5, LETTER, 1",
        "INDEX_4X6, A4, 3",
        "INDEX_4X6, LETTER, 3",
        "A7, A4, 8",
        "INDEX_3X5, A4, 5",
        "INDEX_3X5, LETTER, 5",
        "INDEX_5X8, A4, 2",
        "INDEX_5X8, LETTER, 2",
        "QUARTER_LETTER, LETTER, 4",
        "HALF_LETTER, LETTER, 2",
        "WALL_A4, A4, 1"
    })
    void as_many_whole_cards_as_fit(CardSize size, SheetSize sheet, int expected) {
        List<Frame> sheets = sheets(size, 2 * expected + 1, sheet);
        assertEquals(3, sheets.size());
        assertEquals(expected, cards(sheets.get(0)).size());
        assertEquals(expected, cards(sheets.get(1)).size());
        assertEquals(1, cards(sheets.get(2)).size());
    }

    /**
     * By hand, in millimetres. A3 is 297 x 420: A6 on its side 2 x 148 = 296, 4 x 105 = 420; A5 upright 2 x 148, 2 x
     * 210; A7 upright 4 x 74 = 296, 4 x 105; 3x5: two columns of three upright, 152.4 wide, leave 144.6, which takes five
     * on their sides, 381 high. Legal is 215.9 x 355.6: A6: two rows of two upright, 296, or four; 4x6: two by two, 304.8;
     * 3x5: a column of two upright leaves 139.7, which takes four on their sides, 304.8 high; 5x8: two on their sides.
     */
    @ParameterizedTest
    @CsvSource({
        "A6, 297, 420, 8",
        "A5, 297, 420, 4",
        "A7, 297, 420, 16",
        "INDEX_3X5, 297, 420, 11",
        "WALL_A3, 297, 420, 1",
        "WALL_A4, 297, 420, 2",
        "A6, 215.9, 355.6, 4",
        "INDEX_4X6, 215.9, 355.6, 4",
        "INDEX_3X5, 215.9, 355.6, 6",
        "INDEX_5X8, 215.9, 355.6, 2"
    })
    void as_many_whole_cards_as_fit_on_a3_and_legal(CardSize size, double width, double height, int expected) {
        SheetPlan plan = SheetPlan.on(Stock.millimetres(width, height));
        assertEquals(expected, Imposition.each(card(size, Imposition.MARGIN), plan));
    }

    @Test
    void a_card_larger_than_the_sheet_does_not_fit() {
        Frame wall = card(CardSize.WALL_A3, Imposition.MARGIN);
        SheetPlan plan = SheetPlan.on(Stock.of(SheetSize.A4));
        assertEquals(0, Imposition.each(wall, plan));
        assertThrows(IllegalArgumentException.class, () -> Imposition.impose(List.of(Leaf.of(wall)), plan, NOTE));
    }

    /** By hand: with 10 mm between, 105 + 10 + 105 = 220 of 210 do not fit; a row of 148 leaves 139, which takes 105. */
    @Test
    void gutters_lie_between_cards_and_cost_cards_that_no_longer_fit() {
        SheetPlan plan = SheetPlan.on(Stock.of(SheetSize.A4)).withGutter(10);
        List<Frame> sheets = leaves(CardSize.A6, 4, plan);
        assertEquals(2, cards(sheets.get(0)).size());
        assertApart(sheets.get(0), 10);
    }

    /** What bleeds by 3 mm needs 6 mm between neighbours. */
    @Test
    void bleed_keeps_neighbours_apart_and_marks_off_the_ground() {
        SheetPlan plan = SheetPlan.on(Stock.of(SheetSize.A4)).withBleed(3);
        Frame sheet = Imposition.impose(Collections.nCopies(4, Leaf.of(card(CardSize.A7, 0))), plan, NOTE)
                .get(0);
        assertApart(sheet, 6);
        double three = Millimetres.toPoints(3);
        List<Node.Placed> cards = cards(sheet);
        List<Rectangle> grounds = cards.stream()
                .map(Node.Placed::box)
                .map(box -> new Rectangle(
                        box.x() - three, box.y() - three, box.width() + 2 * three, box.height() + 2 * three))
                .toList();
        double margin = Millimetres.toPoints(4) - 0.01;
        for (Rectangle ground : grounds) {
            assertTrue(ground.x() >= margin && ground.right() <= sheet.width() - margin, ground::toString);
        }
    }

    /** Film seals no edge that is cut with it, so a sheet that is laminated first needs no room between its cards. */
    @ParameterizedTest
    @EnumSource
    void laminating_takes_no_room_from_the_sheet(Laminate laminate) {
        SheetPlan plan = SheetPlan.on(Stock.of(SheetSize.A4)).with(laminate);
        assertEquals(4, cards(leaves(CardSize.A6, 4, plan).get(0)).size());
    }

    @Test
    void laminated_cards_have_guides_for_their_corners() {
        SheetPlan bare = SheetPlan.on(Stock.of(SheetSize.A4));
        assertEquals(0, slanted(leaves(CardSize.A6, 4, bare).get(0)));
        // Four cards fill the sheet: of 16 corners the outer 12 lie where no printer reaches.
        assertEquals(
                4, slanted(leaves(CardSize.A6, 4, bare.with(Laminate.POUCH)).get(0)));
    }

    private static long slanted(Frame sheet) {
        return sheet.backdrop().stream()
                .map(mark -> (Mark.Line) mark)
                .filter(line -> line.x1() != line.x2() && line.y1() != line.y2())
                .count();
    }

    private static List<Frame> leaves(CardSize size, int cards, SheetPlan plan) {
        return Imposition.impose(Collections.nCopies(cards, Leaf.of(card(size, Imposition.MARGIN))), plan, NOTE);
    }

    /** Neighbours are at least so many millimetres apart, across or down. */
    private static void assertApart(Frame sheet, double millimetres) {
        double least = Millimetres.toPoints(millimetres) - 0.01;
        List<Node.Placed> cards = cards(sheet);
        for (int at = 0; at < cards.size(); at++) {
            Rectangle box = cards.get(at).box();
            Rectangle round =
                    new Rectangle(box.x() - least, box.y() - least, box.width() + 2 * least, box.height() + 2 * least);
            for (Node.Placed other : cards.subList(at + 1, cards.size())) {
                assertFalse(Flat.overlap(round, other.box()), () -> round + " is too near to " + other.box());
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"A6, A4", "A6, LETTER", "A5, A4", "A5, LETTER", "INDEX_4X6, A4", "INDEX_4X6, LETTER"})
    void cards_lie_on_the_sheet_at_their_true_size_and_apart(CardSize size, SheetSize sheet) {
        for (Frame made : sheets(size, 5, sheet)) {
            List<Rectangle> boxes = placed(made).stream().map(Node.Placed::box).toList();
            for (int at = 0; at < boxes.size(); at++) {
                Rectangle box = boxes.get(at);
                assertTrue(box.x() > -0.01 && box.right() < made.width() + 0.01, box::toString);
                assertTrue(box.y() > -0.01 && box.bottom() < made.height() + 0.01, box::toString);
                for (Rectangle other : boxes.subList(at + 1, boxes.size())) {
                    assertFalse(Flat.overlap(box, other), () -> box + " lies on " + other);
                }
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"A6, A4", "A6, LETTER", "A5, A4", "A5, LETTER", "INDEX_4X6, A4", "INDEX_4X6, LETTER"})
    void nothing_is_printed_where_printers_do_not_reach(CardSize size, SheetSize sheet) {
        double margin = Millimetres.toPoints(4) - 0.01;
        for (Frame made : sheets(size, 5, sheet)) {
            List<Rectangle> printed = new ArrayList<>(marks(made));
            placed(made).forEach(node -> printed.add(inked(node)));
            for (Rectangle box : printed) {
                assertTrue(
                        box.x() >= margin
                                && box.y() >= margin
                                && box.right() <= made.width() - margin
                                && box.bottom() <= made.height() - margin,
                        box::toString);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"A6, A4", "A6, LETTER", "INDEX_4X6, A4", "INDEX_4X6, LETTER"})
    void marks_for_cutting_keep_off_what_is_read_on_cards(CardSize size, SheetSize sheet) {
        for (Frame made : sheets(size, 5, sheet)) {
            assertFalse(made.backdrop().isEmpty());
            for (Rectangle mark : marks(made)) {
                placed(made).forEach(node -> assertFalse(Flat.overlap(mark, inked(node)), () -> mark + " on " + node));
            }
        }
    }

    private static List<Rectangle> marks(Frame sheet) {
        return sheet.backdrop().stream().map(mark -> box((Mark.Line) mark)).toList();
    }

    /** A stroke's ends are cut straight: it is thick only across. */
    private static Rectangle box(Mark.Line line) {
        double half = line.width() / 2;
        return line.x1() == line.x2()
                ? new Rectangle(line.x1() - half, line.y1(), line.width(), line.y2() - line.y1())
                : new Rectangle(line.x1(), line.y1() - half, line.x2() - line.x1(), line.width());
    }

    /** Where a card may have ink. */
    private static Rectangle inked(Node.Placed node) {
        double clear = node.frame().clear();
        Rectangle box = node.box();
        return new Rectangle(box.x() + clear, box.y() + clear, box.width() - 2 * clear, box.height() - 2 * clear);
    }

    @Test
    void the_note_stands_outside_the_cards_where_there_is_room() {
        assertTrue(hasNote(sheets(CardSize.A6, 3, SheetSize.LETTER).get(0)));
        assertTrue(hasNote(sheets(CardSize.A6, 2, SheetSize.A4).get(0)));
        assertTrue(hasNote(sheets(CardSize.A6, 3, SheetSize.A4).get(0)));
        assertFalse(hasNote(sheets(CardSize.A6, 4, SheetSize.A4).get(0)), "four cards fill the sheet");
    }

    private static boolean hasNote(Frame sheet) {
        return placed(sheet).stream().anyMatch(node -> node.frame().equals(NOTE));
    }

    @Test
    void cards_without_a_blank_edge_keep_out_of_the_margin() {
        List<Frame> sheets = Imposition.impose(Collections.nCopies(4, card(CardSize.A6, 0)), SheetSize.A4, NOTE);
        // 200 x 287 mm are left: one upright beside none, or one and on its side below one more.
        assertEquals(2, cards(sheets.get(0)).size());
    }

    @Test
    void cards_keep_their_order() {
        Frame first = card(CardSize.A6, 20);
        Frame second = card(CardSize.A6, 21);
        Frame sheet =
                Imposition.impose(List.of(first, second), SheetSize.A4, NOTE).get(0);
        assertSame(first, cards(sheet).get(0).frame());
        assertSame(second, cards(sheet).get(1).frame());
    }

    @Test
    void no_cards_need_no_sheet() {
        assertEquals(List.of(), Imposition.impose(List.of(), SheetSize.A4, NOTE));
    }

    @Test
    void cards_of_several_sizes_are_refused() {
        List<Frame> mixed = List.of(card(CardSize.A6, 20), card(CardSize.A5, 20));
        assertThrows(IllegalArgumentException.class, () -> Imposition.impose(mixed, SheetSize.A4, NOTE));
    }
}
