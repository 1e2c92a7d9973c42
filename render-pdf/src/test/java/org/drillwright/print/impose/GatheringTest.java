package org.drillwright.print.impose;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Sheets as a folder of paper would lay them: take real sheets, fold, number the pages, and open them out again. */
class GatheringTest {

    private static List<Frame> pages(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(number -> new Frame(
                        10,
                        20,
                        0,
                        List.of(),
                        List.of(new Node.Group(Role.CARD, List.of(new Node.Anchor("" + number, 0, 0))))))
                .toList();
    }

    /** What stands on each side of the sheets from left to right; a dash for a blank page. */
    private static String said(Gathering gathering) {
        List<String> sides = new ArrayList<>();
        for (Frame side : gathering.sides()) {
            String[] halves = {"-", "-"};
            for (Node node : side.content()) {
                Node.Placed placed = (Node.Placed) node;
                Node.Group card = (Node.Group) placed.frame().content().get(0);
                halves[placed.x() > 0 ? 1 : 0] = ((Node.Anchor) card.parts().get(0)).name();
            }
            sides.add(String.join(" ", halves));
        }
        return String.join(", ", sides);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 | - 1, - -",
                "4 | 4 1, 2 3",
                "6 | - 1, 2 -, 6 3, 4 5",
                "8 | 8 1, 2 7, 6 3, 4 5",
                "12 | 12 1, 2 11, 10 3, 4 9, 8 5, 6 7",
            })
    void folded_sheets_open_page_after_page(int count, String sides) {
        assertEquals(sides, said(Gathering.of(pages(count))));
    }

    /** Turned over the short edge, page 2 lies behind page 1, which is now at the left. */
    @Test
    void a_book_that_is_read_from_the_right_opens_the_other_way() {
        assertEquals("1 8, 7 2, 3 6, 5 4", said(Gathering.of(pages(8), true)));
        assertEquals(
                List.of(0, 7, 6, 1, 2, 5, 4, 3), Gathering.of(pages(8), true).order());
    }

    @Test
    void a_thick_book_is_folded_in_parts() {
        Gathering gathering = Gathering.of(pages(100));
        assertEquals(26, gathering.sides().size() / 2);
        assertEquals(13, gathering.sheets());
        assertTrue(said(gathering).startsWith("52 1, 2 51, "), said(gathering));
        assertTrue(said(gathering).contains("26 27, - 53, 54 -"), said(gathering));
    }

    @Test
    void the_order_of_reading_passes_over_blank_pages() {
        List<Frame> pages = new ArrayList<>(pages(4));
        pages.set(1, new Frame(10, 20, 0, List.of(), List.of()));
        assertEquals(List.of(2, 0, 1), Gathering.of(pages).order());
    }
}
