package org.drillwright.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Lines and columns, worked out by hand on texts of a few characters. */
class SourceFileTest {

    static Stream<Arguments> offsets() {
        return Stream.of(
                arguments("a\nbc\n", 0, 1, 1),
                arguments("a\nbc\n", 1, 1, 2),
                arguments("a\nbc\n", 2, 2, 1),
                arguments("a\nbc\n", 3, 2, 2),
                arguments("a\nbc\n", 5, 3, 1),
                arguments("a\r\nb", 1, 1, 2),
                arguments("a\r\nb", 3, 2, 1),
                arguments("a\rb", 2, 2, 1),
                arguments("a\rb\r", 4, 3, 1),
                arguments("a\n\rb", 3, 3, 1),
                arguments("ab", 2, 1, 3),
                arguments("ab", 9, 1, 3),
                arguments("", 0, 1, 1),
                arguments("\uD83E\uDD3Aab", 2, 1, 2),
                arguments("\uD83E\uDD3Aab", 3, 1, 3),
                arguments("a\n\uD83E\uDD3Ab", 4, 2, 2),
                arguments("e\u0301b", 2, 1, 3));
    }

    @ParameterizedTest
    @MethodSource("offsets")
    void an_offset_is_found_as_people_count(String text, int offset, int line, int column) {
        assertEquals(new LineColumn(line, column), new SourceFile("f", text).position(offset));
    }

    @Test
    void a_line_is_given_without_its_end() {
        SourceFile file = new SourceFile("f", "one\r\n\r\nthree\rfour\nfive");
        assertEquals(5, file.lineCount());
        assertEquals(new Span(0, 3), file.line(1));
        assertEquals(new Span(5, 5), file.line(2));
        assertEquals("three", file.slice(file.line(3)));
        assertEquals("four", file.slice(file.line(4)));
        assertEquals("five", file.slice(file.line(5)));
    }

    @Test
    void a_last_line_end_begins_an_empty_line() {
        SourceFile file = new SourceFile("f", "one\n");
        assertEquals(2, file.lineCount());
        assertEquals(new Span(4, 4), file.line(2));
    }
}
