package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.drillwright.notation.Measure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The measure in foot actions: close below 0, extension 0, lunge 1, advance-lunge 2, out 3 and more. */
class RangeTest {

    @ParameterizedTest
    @CsvSource({
        "CLOSE, close distance",
        "EXTENSION, extension distance",
        "LUNGE, lunge distance",
        "ADVANCE_LUNGE, advance-lunge distance",
        "OUT, out of distance"
    })
    void is_said_in_the_words_of_the_cards(Measure measure, String words) {
        assertEquals(words, Range.of(measure).words().english());
        assertTrue(Range.of(measure).isKnown());
    }

    @Test
    void who_steps_in_from_out_of_distance_is_at_advance_and_lunge_or_further_off() {
        Range nearer = Range.of(Measure.OUT).shift(-1);
        assertEquals("advance-lunge distance or further away", nearer.words().english());
        assertTrue(nearer.meets(Range.of(Measure.OUT)));
        assertTrue(nearer.meets(Range.exactly(2)));
        assertFalse(nearer.meets(Range.exactly(1)));
        assertFalse(Range.exactly(1).meets(nearer));
    }

    @Test
    void who_steps_back_from_close_distance_is_at_extension_or_still_nearer() {
        assertEquals(
                "extension distance or nearer",
                Range.of(Measure.CLOSE).shift(1).words().english());
        assertEquals("close distance", Range.of(Measure.CLOSE).shift(-1).words().english());
        assertEquals("out of distance", Range.of(Measure.OUT).shift(1).words().english());
    }

    @Test
    void far_apart_and_close_have_no_end_that_a_step_could_shift() {
        assertEquals(
                new Range(5, Range.of(Measure.OUT).most()),
                Range.of(Measure.OUT).shift(2));
        assertEquals(
                new Range(Range.of(Measure.CLOSE).least(), 0),
                Range.of(Measure.CLOSE).shift(1));
        assertEquals(Range.UNKNOWN, Range.UNKNOWN.shift(-3));
    }

    @Test
    void nothing_is_known_of_the_unknown() {
        assertFalse(Range.UNKNOWN.isKnown());
        assertFalse(Range.UNKNOWN.isExact());
        assertEquals("an unknown distance", Range.UNKNOWN.words().english());
        assertTrue(Range.UNKNOWN.meets(Range.exactly(1)));
    }
}
