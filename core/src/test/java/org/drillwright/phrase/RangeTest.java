package org.drillwright.phrase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.drillwright.notation.Measure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The measure in foot actions: close below 0, extension 0, lunge 1, advance-lunge 2, out 2 and more. */
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

    /** A step back takes a fencer out of a lunge's reach (Waite 1880, p. 86), and a step in brings him back into it. */
    @Test
    void who_steps_in_from_out_of_distance_is_at_lunge_or_further_off() {
        Range nearer = Range.of(Measure.OUT).shift(-1);
        assertEquals("lunge distance or further away", nearer.words().english());
        assertTrue(nearer.meets(Range.of(Measure.OUT)));
        assertTrue(nearer.meets(Range.exactly(1)));
        assertFalse(nearer.meets(Range.exactly(0)));
        assertFalse(Range.exactly(0).meets(nearer));
    }

    @Test
    void advance_and_lunge_is_out_of_a_lunges_reach_but_called_by_its_own_name() {
        assertTrue(Range.of(Measure.OUT).meets(Range.of(Measure.ADVANCE_LUNGE)));
        assertFalse(Range.exactly(2).isOut());
        assertTrue(Range.exactly(3).isOut());
    }

    @Test
    void a_touch_sets_an_end_only_to_what_has_none() {
        Range nearer = Range.of(Measure.OUT).shift(-2);
        assertEquals(Range.exactly(0), nearer.within(0));
        assertEquals(
                "extension distance to lunge distance", nearer.within(1).words().english());
        assertEquals(Range.of(Measure.OUT), Range.of(Measure.OUT).within(0));
        assertEquals(Range.UNKNOWN, Range.UNKNOWN.within(0));
        assertEquals(Range.exactly(-1), Range.exactly(-1).within(0));
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
                new Range(4, Range.of(Measure.OUT).most()),
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
