package org.drillwright.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StretchesTest {

    @Test
    void a_text_that_was_written_as_it_reads_is_one_stretch() {
        assertSame(Stretches.ONE, Stretches.of(new int[] {4, 5, 6}, new int[] {5, 6, 7}));
    }

    /** The text {@code a b}, folded: its blank was a line end and an indent of two, from 11 to 14. */
    @Test
    void a_folded_text_is_a_stretch_a_line_and_one_between() {
        Stretches folded = Stretches.of(new int[] {10, 11, 14}, new int[] {11, 14, 15});
        assertEquals(3, folded.count());
    }

    @Test
    void each_unit_keeps_its_place_whatever_the_places_are() {
        Random random = new Random(1);
        for (int round = 0; round < 2_000; round++) {
            int length = 1 + random.nextInt(12);
            int[] starts = new int[length];
            int[] ends = new int[length];
            int at = random.nextInt(100);
            for (int unit = 0; unit < length; unit++) {
                at += random.nextInt(4) == 0 ? random.nextInt(7) - 3 : 0;
                starts[unit] = Math.max(0, at);
                ends[unit] = starts[unit] + (random.nextInt(4) == 0 ? random.nextInt(4) : 1);
                at = starts[unit] + 1;
            }
            Stretches stretches = Stretches.of(starts, ends);
            for (int unit = 0; unit < length; unit++) {
                assertEquals(starts[unit], starts[0] + stretches.start(unit), Arrays.toString(starts));
                assertEquals(ends[unit], starts[0] + stretches.end(unit), Arrays.toString(ends));
            }
        }
    }
}
