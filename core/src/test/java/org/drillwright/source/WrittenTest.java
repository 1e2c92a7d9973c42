package org.drillwright.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class WrittenTest {

    /** The text {@code a"b}, written {@code a\"b} from offset 10 on. */
    private static final Written ESCAPED = new Written("a\"b", new int[] {10, 11, 13}, new int[] {11, 13, 14});

    @Test
    void a_stretch_lies_where_it_was_written() {
        assertEquals(new Span(11, 13), ESCAPED.span(1, 2));
        assertEquals(new Span(10, 14), ESCAPED.whole());
        assertEquals(new Span(13, 14), ESCAPED.slice(2, 3).whole());
    }

    @Test
    void an_empty_stretch_lies_where_it_would_begin() {
        assertEquals(Span.at(11), ESCAPED.span(1, 1));
        assertEquals(Span.at(14), ESCAPED.span(3, 3));
    }

    @Test
    void each_unit_needs_a_place() {
        assertThrows(IllegalArgumentException.class, () -> new Written("ab", new int[1], new int[2]));
        assertThrows(IllegalArgumentException.class, () -> new Span(3, 2));
        assertThrows(IllegalArgumentException.class, () -> new Span(-1, 2));
    }
}
