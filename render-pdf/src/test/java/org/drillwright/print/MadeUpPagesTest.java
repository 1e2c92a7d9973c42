package org.drillwright.print;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.drillwright.model.SheetSize;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.frame.Role;
import org.drillwright.print.layout.WholeCards;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Pages of every kind hold words half as long again, and words from the right. */
class MadeUpPagesTest {

    /** The least type of a term's sheet, read at 280 mm (ISO 9241-303), and of any other page (docs/cards.md), in points. */
    private static final Map<String, Double> LEAST = Map.of("term", 5.2);

    private static final double LEAST_OF_PAGES = 7;

    /** A drill that is longer than a page of the booklet takes two that face each other, and may leave a third blank. */
    private static final Map<String, Double> MORE = Map.of("booklet", 2.0);

    private static final double MORE_OF_PAGES = 1.5;

    private static final Map<Printed, Map<String, List<Frame>>> PAGES = new ConcurrentHashMap<>();

    private static Map<String, List<Frame>> pages(Optional<MadeUp> language, SheetSize size) {
        return PAGES.computeIfAbsent(new Printed(language, size), Printed::all);
    }

    static Stream<Arguments> printed() {
        return Stream.of(Optional.<MadeUp>empty(), Optional.of(MadeUp.LONG), Optional.of(MadeUp.FROM_THE_RIGHT))
                .flatMap(language ->
                        Stream.of(SheetSize.A4, SheetSize.LETTER).map(size -> Arguments.of(language, size)));
    }

    @ParameterizedTest
    @MethodSource("printed")
    void nothing_overflows_overlaps_or_is_too_small(Optional<MadeUp> language, SheetSize size) {
        assertAll(pages(language, size).entrySet().stream()
                .flatMap(kind -> kind.getValue().stream().map(page -> () -> {
                    try {
                        WholeCards.inPlace(page);
                    } catch (AssertionError wrong) {
                        throw new AssertionError(kind.getKey() + ": " + wrong.getMessage(), wrong);
                    }
                    double least = LEAST.getOrDefault(kind.getKey(), LEAST_OF_PAGES) - 1e-9;
                    for (Mark.Text text : Flat.texts(page)) {
                        assertTrue(text.size() >= least, () -> kind.getKey() + ": " + text + " is too small");
                    }
                })));
    }

    /** A bar of a class, a plan of a hall, two lines: what is written in them stays in them, and nothing on anything else. */
    @ParameterizedTest
    @MethodSource("printed")
    void words_in_drawings_have_room(Optional<MadeUp> language, SheetSize size) {
        pages(language, size)
                .forEach((kind, pages) -> pages.stream()
                        .flatMap(page -> Flat.figures(page).stream())
                        .forEach(figure -> {
                            List<Rectangle> words = figure.marks().stream()
                                    .filter(Mark.Text.class::isInstance)
                                    .map(mark -> Flat.box((Mark.Text) mark))
                                    .toList();
                            for (int at = 0; at < words.size(); at++) {
                                Rectangle box = words.get(at);
                                assertTrue(
                                        box.x() >= -0.1
                                                && box.right() <= figure.box().width() + 0.1,
                                        () -> kind + ": " + figure.alternative() + " " + box);
                                for (Rectangle other : words.subList(at + 1, words.size())) {
                                    assertFalse(
                                            Flat.overlap(box, other),
                                            () -> kind + ": " + figure.alternative() + " " + box);
                                }
                            }
                        }));
    }

    /** Words half as long again fill at most half as many pages more. */
    @ParameterizedTest
    @EnumSource
    void few_pages_more_are_needed(MadeUp language) {
        Map<String, List<Frame>> english = pages(Optional.empty(), SheetSize.A4);
        Map<String, List<Frame>> made = pages(Optional.of(language), SheetSize.A4);
        assertAll(english.entrySet().stream().map(kind -> () -> {
            int most = (int) Math.ceil(MORE.getOrDefault(kind.getKey(), MORE_OF_PAGES)
                    * kind.getValue().size());
            int pages = made.get(kind.getKey()).size();
            assertTrue(pages <= most, () -> kind.getKey() + " takes " + pages + " pages, not " + most);
        }));
    }

    /** What is read first stands at the right: each title ends at the right margin, each row of a table goes to the left. */
    @ParameterizedTest
    @EnumSource(names = {"A4", "LETTER"})
    void what_is_read_first_stands_at_the_right(SheetSize size) {
        pages(Optional.of(MadeUp.FROM_THE_RIGHT), size).forEach((kind, pages) -> {
            for (Frame page : pages) {
                Flat.words(page).stream()
                        .filter(words -> words.role() == Role.TITLE && !kind.equals("booklet"))
                        .findFirst()
                        .ifPresent(title -> assertEquals(
                                page.width() - page.clear(),
                                Flat.box(title.lines().get(0)).right(),
                                0.1,
                                () -> kind + ": " + title));
                page.content().forEach(node -> rowsGoToTheLeft(kind, node));
            }
        });
    }

    private static void rowsGoToTheLeft(String kind, Node node) {
        if (!(node instanceof Node.Group group)) {
            return;
        }
        group.parts().forEach(part -> rowsGoToTheLeft(kind, part));
        if (group.role() == Role.ROW) {
            List<Mark.Text> cells = group.parts().stream()
                    .filter(Node.Words.class::isInstance)
                    .map(part -> ((Node.Words) part).lines())
                    .filter(lines -> !lines.isEmpty())
                    .map(lines -> lines.get(0))
                    .toList();
            for (int at = 1; at < cells.size(); at++) {
                double before = Flat.box(cells.get(at - 1)).right();
                double next = Flat.box(cells.get(at)).right();
                assertTrue(next <= before + 0.1, () -> kind + ": " + cells);
            }
        }
    }
}
