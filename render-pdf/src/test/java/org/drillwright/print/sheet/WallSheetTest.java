package org.drillwright.print.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.drillwright.model.Language;
import org.drillwright.model.SheetSize;
import org.drillwright.print.frame.Face;
import org.drillwright.print.frame.Frame;
import org.drillwright.print.frame.Mark;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Node;
import org.drillwright.print.frame.Role;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.sheet.wall.WallTexts;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WallSheetTest {

    private static final Family FACES = Family.dejaVu();

    /** 16 minutes of arc at 3 m, in points: NUREG-0700 rev. 2, 1.3.1-4. */
    private static final double FLOOR = Millimetres.toPoints(13.963) - 0.05;

    private static List<Frame> pages(int rounds, int pairs, SheetSize size, String one, String other) {
        List<WallWords.Row> rows = IntStream.rangeClosed(1, pairs)
                .mapToObj(place -> new WallWords.Row(String.valueOf(place), List.of(one, other + place)))
                .toList();
        List<WallWords.Block> blocks = IntStream.rangeClosed(1, rounds)
                .mapToObj(round -> new WallWords.Block("Round " + round, "Riposte", "", rows))
                .toList();
        return WallSheet.pages(new WallWords(blocks, "foot", WallTexts.in(Language.ENGLISH)), size, FACES);
    }

    private static List<Node.Words> words(List<Frame> pages) {
        List<Node.Words> words = new ArrayList<>();
        pages.forEach(page -> page.content().forEach(node -> collect(node, words)));
        return words;
    }

    private static void collect(Node node, List<Node.Words> into) {
        if (node instanceof Node.Group group) {
            group.parts().forEach(part -> collect(part, into));
        } else if (node instanceof Node.Words words) {
            into.add(words);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "1, 1, A4, Ash, B",
        "9, 12, A4, Ash, B",
        "9, 12, A3, Wilhelmina Oakenfield, Bartholomew ",
        "2, 100, LETTER, Ash, B",
        "3, 4, LEGAL, Ash, Peregrine Marsh "
    })
    void names_are_read_from_three_metres_and_nobody_is_lost(
            int rounds, int pairs, SheetSize size, String one, String other) {
        List<Frame> pages = pages(rounds, pairs, size, one, other);
        int cells = 0;
        for (Node.Words words : words(pages)) {
            if (words.role() == Role.CELL || words.role() == Role.ROW_HEAD) {
                cells += words.role() == Role.CELL ? 1 : 0;
                for (Mark.Text line : words.lines()) {
                    double height = line.size() * FACES.of(Face.REGULAR).capHeight();
                    assertTrue(height >= FLOOR, line.text() + " is " + height);
                }
            }
        }
        assertEquals(rounds * pairs, cells);
        for (Frame page : pages) {
            for (Node.Words words : words(List.of(page))) {
                for (Mark.Text line : words.lines()) {
                    double right = line.x() + FACES.of(line.face()).width(line.text()) * line.size();
                    assertTrue(right <= page.width() - page.clear() + 0.5, line.text());
                    assertTrue(line.baseline() <= page.height() - page.clear(), line.text());
                }
            }
        }
    }

    @Test
    void a_small_class_has_several_rounds_to_a_page() {
        assertTrue(pages(6, 2, SheetSize.A4, "Ash", "B").size() < 6);
    }

    /** By hand: 14 mm capitals are type of 54 points, a row 65; eight rows and a head of 100 are 620 of the 800 of A4. */
    @Test
    void eight_pairs_of_short_names_are_one_page() {
        assertEquals(3, pages(3, 8, SheetSize.A4, "Ash", "B").size());
    }
}
