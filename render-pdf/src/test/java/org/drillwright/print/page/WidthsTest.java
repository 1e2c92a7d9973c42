package org.drillwright.print.page;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Worked out by hand. */
class WidthsTest {

    @Test
    void columns_that_have_enough_stay_as_they_are() {
        assertEquals(List.of(10.0, 20.0), Widths.holding(List.of(10.0, 20.0), List.of(10.0, 5.0)));
    }

    /** The second and the third can spare 5 and 15: a quarter and three quarters of the 8 that the first wants. */
    @Test
    void a_wide_word_is_given_room_by_those_that_can_spare_it() {
        assertEquals(List.of(18.0, 18.0, 24.0), Widths.holding(List.of(10.0, 20.0, 30.0), List.of(18.0, 15.0, 15.0)));
    }

    @Test
    void what_cannot_be_spared_is_not_given() {
        assertEquals(List.of(12.0, 8.0), Widths.holding(List.of(10.0, 10.0), List.of(30.0, 8.0)));
    }
}
