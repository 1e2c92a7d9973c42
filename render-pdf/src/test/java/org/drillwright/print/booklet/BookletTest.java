package org.drillwright.print.booklet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.Subject;
import org.drillwright.explain.SetWork;
import org.drillwright.model.Drill;
import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.model.Turn;
import org.drillwright.print.Example;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.layout.WholeCards;
import org.drillwright.print.layout.words.Labels;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.text.Wording;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The example school laid as a book. */
class BookletTest {

    private static final Labels LABELS = Labels.in(Language.ENGLISH);

    private static Booklet booklet() {
        List<Subject> drills = Example.drills();
        return new Booklet(
                "Larkspur",
                drills.stream().map(Example::card).map(BookletEntry::new).toList(),
                Map.of("All", SetWork.of(drills, drills.get(0).school())),
                Map.of("All", drills.size()),
                new Index(Map.of(), Map.of()));
    }

    private static PageGrid grid(SheetSize sheet, boolean whole) {
        return whole ? PageGrid.whole(sheet) : PageGrid.half(sheet);
    }

    private static Set<Double> sizes(List<Frame> pages) {
        return pages.stream()
                .flatMap(page -> Flat.texts(page).stream())
                .map(Mark.Text::size)
                .collect(Collectors.toSet());
    }

    /** The pages are counted, so that whoever changes them says why: with cards of Letter's half in it there were 75. */
    @ParameterizedTest
    @CsvSource({"A4, false, 43", "LETTER, false, 49", "A4, true, 38"})
    void every_page_keeps_its_margins_its_sizes_and_its_place(SheetSize sheet, boolean whole, int counted) {
        PageGrid grid = grid(sheet, whole);
        List<Frame> pages = booklet().pages(grid, LABELS, Family.dejaVu());
        assertEquals(counted, pages.size());
        for (Frame page : pages) {
            WholeCards.inPlace(page, grid.grid(), grid.grid().hole());
        }
        Set<Double> sizes = new HashSet<>(grid.grid().scale().sizes());
        sizes.add(grid.notes().size());
        sizes.addAll(sizes(pages));
        assertEquals(grid.grid().scale().sizes().size() + 1, sizes.size());
        assertTrue(sizes.stream().allMatch(size -> size >= 7));
    }

    /** The sizes of the design, in points: numbers, title, turns, small, notes, foot. */
    @Test
    void type_is_of_the_sizes_of_the_design() {
        assertEquals(
                List.of(26.0, 17.0, 10.5, 9.0, 8.5),
                PageGrid.half(SheetSize.A4).grid().scale().sizes());
        assertEquals(9.5, PageGrid.half(SheetSize.A4).notes().size());
        List<Double> page = PageGrid.half(SheetSize.A4).grid().scale().sizes();
        List<Double> large = PageGrid.whole(SheetSize.A4).grid().scale().sizes();
        for (int at = 0; at < page.size(); at++) {
            assertEquals(1.2 * page.get(at), large.get(at), 1e-9);
        }
    }

    @Test
    void a_drill_of_two_pages_is_seen_at_once_and_nothing_of_it_is_lost() {
        Booklet booklet = booklet();
        List<Frame> pages = booklet.pages(PageGrid.half(SheetSize.A4), LABELS, Family.dejaVu());
        List<String> letters =
                pages.stream().map(page -> Flat.letters(List.of(page))).toList();
        int at = 2;
        for (BookletEntry entry : booklet.entries()) {
            String title = Flat.bare(Wording.clean(entry.title()));
            while (!letters.get(at)
                    .contains(title + Flat.bare(LABELS.weapon(entry.drill().weapon())))) {
                assertTrue(letters.get(at).contains("Foryourownnotes"), letters.get(at));
                at++;
            }
            boolean pair = letters.get(at + 1).contains(title + "·Continued");
            assertTrue(!pair || at % 2 == 1, () -> entry.id() + " is parted by the turning of a page");
            String words = letters.get(at) + (pair ? letters.get(at + 1) : "");
            printed(entry.drill())
                    .forEach(text ->
                            assertTrue(words.contains(Flat.bare(Wording.clean(text))), () -> entry.id() + ": " + text));
            at += pair ? 2 : 1;
        }
    }

    private static Stream<String> printed(Drill drill) {
        Stream<String> steps = drill.steps().stream()
                .flatMap(step -> Stream.of(
                        step.call(),
                        step.leader().map(Turn::say).orElse(""),
                        step.follower().map(Turn::say).orElse(""),
                        step.distance(),
                        step.safety()));
        Stream<String> around =
                Stream.of(drill.purpose(), drill.opening(), drill.start(), drill.closing(), drill.note());
        return Stream.of(steps, around, drill.cautions().stream()).flatMap(some -> some);
    }
}
