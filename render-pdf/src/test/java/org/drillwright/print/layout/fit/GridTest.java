package org.drillwright.print.layout.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.drillwright.model.CardSize;
import org.drillwright.print.Flat;
import org.drillwright.print.frame.Millimetres;
import org.drillwright.print.frame.Rectangle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class GridTest {

    /** The mean width of the letters of drills in DejaVu Sans Condensed, measured, as a share of the size. */
    private static final double LETTER = 0.441;

    /** Millimetres, and how many letters a line of turns has. */
    @ParameterizedTest
    @CsvSource({
        "A7, 74, 105, 4, 8, 21, 21",
        "INDEX_3X5, 76.2, 127, 4, 8, 22, 22",
        "A6, 105, 148, 5, 9, 28, 30",
        "INDEX_4X6, 101.6, 152.4, 5, 9, 28, 28",
        "QUARTER_LETTER, 107.95, 139.7, 5, 9, 26, 33",
        "A5, 148, 210, 8, 13, 40, 32",
        "INDEX_5X8, 127, 203.2, 8, 13, 34, 25",
        "HALF_LETTER, 139.7, 215.9, 8, 13, 38, 30",
        "WALL_A4, 210, 297, 10, 18, 54, 28",
        "WALL_A3, 297, 420, 12, 25, 72, 25"
    })
    void each_size_has_its_columns(
            CardSize size, double width, double height, double margin, double number, double picture, int letters) {
        Grid grid = Grid.of(size);
        assertEquals(Millimetres.toPoints(width), grid.width(), 1e-9);
        assertEquals(Millimetres.toPoints(height), grid.height(), 1e-9);
        assertEquals(Millimetres.toPoints(margin), grid.margin(), 1e-9);
        assertEquals(Millimetres.toPoints(number), grid.number(), 1e-9);
        assertEquals(Millimetres.toPoints(picture), grid.picture(), 1e-9);
        double fit = grid.wordsWidth() / (LETTER * grid.scale().turns().size());
        assertEquals(letters, fit, 1.3);
    }

    @ParameterizedTest
    @EnumSource
    void columns_follow_each_other_from_margin_to_margin(CardSize size) {
        Grid grid = Grid.of(size);
        assertEquals(grid.left() + grid.number(), grid.axis(), 1e-9);
        assertTrue(grid.words() > grid.axis());
        assertTrue(grid.words() + grid.wordsWidth() < grid.pictures());
        assertEquals(grid.right(), grid.pictures() + grid.picture(), 1e-9);
        assertTrue(grid.bottom() <= grid.height() - Millimetres.toPoints(4) + 1e-9);
    }

    /** The hole costs no room: it lies left of the axis, seen from behind right of all but the margin. */
    @ParameterizedTest
    @EnumSource
    void the_hole_is_in_front_of_the_axis(CardSize size) {
        Grid grid = Grid.of(size);
        Rectangle hole = grid.hole();
        assertEquals(size.isForTheWall(), hole.width() == 0);
        assertTrue(hole.right() <= grid.axis());
        assertEquals(grid.right(), grid.holeBehind().right(), 1e-9);
        assertFalse(Flat.overlap(hole, grid.holeBehind()));
    }

    @ParameterizedTest
    @EnumSource
    void one_person_leaves_the_words_more_room(CardSize size) {
        Grid two = Grid.of(size);
        Grid one = two.forOne();
        assertEquals(20 / 28.0, one.picture() / two.picture(), 1e-9);
        assertEquals(two.picture() - one.picture(), one.wordsWidth() - two.wordsWidth(), 1e-9);
    }
}
