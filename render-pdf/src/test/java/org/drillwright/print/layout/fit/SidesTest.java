package org.drillwright.print.layout.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Worked out by hand: the first side holds 100, each other 150; the closing takes 30, the line that sends on 10. */
class SidesTest {

    private static final Sides SIDES = new Sides(side -> side == 0 ? 100 : 150, 30, () -> 10);

    @Test
    void what_fits_one_side_stays_on_it() {
        assertEquals(Optional.of(List.of(2)), SIDES.share(List.of(35.0, 35.0)));
    }

    @Test
    void as_many_as_fit_stay_in_front() {
        // 90 hold one count of 36 more than 54 would; with the closing three are 138.
        assertEquals(Optional.of(List.of(2, 1)), SIDES.share(List.of(36.0, 36.0, 36.0)));
        assertEquals(Optional.of(List.of(2, 3)), SIDES.share(Collections.nCopies(5, 40.0)));
    }

    @Test
    void the_closing_stays_with_the_last_count() {
        // Both counts would fit in front, the closing would not: the last goes with it.
        assertEquals(Optional.of(List.of(1, 1)), SIDES.share(List.of(45.0, 45.0)));
    }

    @Test
    void a_count_that_fills_a_side_leaves_the_closing_to_the_next() {
        assertEquals(Optional.of(List.of(0, 1, 0)), SIDES.share(List.of(140.0)));
    }

    @Test
    void a_count_longer_than_any_side_fits_none() {
        assertEquals(Optional.empty(), SIDES.share(List.of(151.0)));
    }

    @Test
    void a_closing_longer_than_a_side_fits_none() {
        assertEquals(Optional.empty(), new Sides(side -> 100, 120, () -> 10).share(List.of(50.0)));
    }

    @Test
    void as_many_sides_as_are_needed() {
        // 90 hold one count of 50, 140 two each; nine: 1, 2, 2, 2, 2 with 100 + 30 on the last.
        assertEquals(Optional.of(List.of(1, 2, 2, 2, 2)), SIDES.share(Collections.nCopies(9, 50.0)));
    }
}
