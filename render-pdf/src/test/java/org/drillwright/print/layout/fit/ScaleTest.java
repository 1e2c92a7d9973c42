package org.drillwright.print.layout.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.drillwright.model.CardSize;
import org.drillwright.print.frame.Face;
import org.drillwright.print.pdf.Family;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** The sizes of type: our own choice, each held against what can be read at its distance. */
class ScaleTest {

    @ParameterizedTest
    @CsvSource({
        "POCKET, 19, 10.5, 12.5, 9.5, 11.5, 7.5, 9.25, 7, 8.5",
        "HAND, 24, 13, 15.5, 11, 13, 9, 10.5, 7.5, 9",
        "RING, 34, 18, 21, 14, 17, 11, 13.5, 8.5, 10.5",
        "WALL_A4, 52, 30, 35, 24, 28, 16, 19, 11, 13.5",
        "WALL_A3, 76, 42, 48, 39, 44, 20, 24, 14, 17"
    })
    void each_scale_has_five_sizes(
            Scale scale,
            double number,
            double title,
            double titleLeading,
            double turns,
            double turnsLeading,
            double small,
            double smallLeading,
            double foot,
            double footLeading) {
        assertEquals(number, scale.number());
        assertEquals(new TypeSize(title, titleLeading), scale.title());
        assertEquals(new TypeSize(turns, turnsLeading), scale.turns());
        assertEquals(new TypeSize(small, smallLeading), scale.small());
        assertEquals(new TypeSize(foot, footLeading), scale.foot());
        assertEquals(List.of(number, title, turns, small, foot), scale.sizes());
    }

    @ParameterizedTest
    @CsvSource({
        "A7, POCKET",
        "INDEX_3X5, POCKET",
        "A6, HAND",
        "INDEX_4X6, HAND",
        "QUARTER_LETTER, HAND",
        "A5, RING",
        "INDEX_5X8, RING",
        "HALF_LETTER, RING",
        "WALL_A4, WALL_A4",
        "WALL_A3, WALL_A3"
    })
    void each_size_of_card_has_its_scale(CardSize size, Scale scale) {
        assertEquals(scale, Scale.of(size));
    }

    /**
     * At the distance in metres capitals fill 16 minutes of arc, the least of ISO 9241-3 and NUREG-0700: pocket .5, an
     * outstretched hand .6, a card on a belt or a music stand .75, the wall 1.3 and 2.2.
     */
    @ParameterizedTest
    @CsvSource({"POCKET, .5", "HAND, .6", "RING, .75", "WALL_A4, 1.3", "WALL_A3, 2.1"})
    void turns_are_readable_at_their_distance(Scale scale, double metres) {
        double capitals =
                Family.dejaVu().of(Face.REGULAR).capHeight() * scale.turns().size();
        assertTrue(capitals >= Legibility.height(16, 1000 * metres));
    }

    /** DIN 4844-1: a height is found from 300 times as far; in whole tenths of a metre, not rounded up. */
    @ParameterizedTest
    @CsvSource({"WALL_A4, 1.8", "WALL_A3, 3"})
    void a_sheet_for_the_wall_says_from_how_far_its_turns_are_found(Scale scale, double metres) {
        double capitals =
                Family.dejaVu().of(Face.REGULAR).capHeight() * scale.turns().size() * 25.4 / 72;
        assertEquals(metres, scale.readableFrom().orElseThrow());
        assertTrue(capitals * 300 >= 1000 * metres - 20);
    }

    @ParameterizedTest
    @EnumSource
    void no_type_is_under_seven_points(Scale scale) {
        assertTrue(scale.sizes().stream().allMatch(size -> size >= 7));
    }

    /** DIN 1450 asks for 1.4 times the size at an acuity of .5, from memory; the next scale is nearly that or more. */
    @Test
    void large_print_is_the_next_scale() {
        assertEquals(Scale.HAND, Scale.POCKET.larger());
        assertEquals(Scale.RING, Scale.HAND.larger());
        assertEquals(Scale.WALL_A4, Scale.RING.larger());
        assertEquals(Scale.WALL_A3, Scale.WALL_A4.larger());
        assertEquals(Scale.WALL_A3, Scale.WALL_A3.larger());
    }
}
