package org.drillwright.source;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SourcePlacesTest {

    private static final Written WORDS = Written.asItStands("foil", 20);
    private static final SourcePlaces PLACES = new SourcePlaces(Map.of(
            FieldPath.of("weapon"), new Field(new Span(12, 18), new Span(20, 24), WORDS),
            FieldPath.of("steps/0"), new Field(new Span(40, 42), new Span(42, 60), Written.asItStands("", 0))));

    @Test
    void a_value_that_is_there_has_its_own_place() {
        assertEquals(new Span(20, 24), PLACES.span(FieldPath.of("weapon")));
    }

    @Test
    void an_absent_value_has_the_place_of_what_is_around_it() {
        assertEquals(
                new Span(40, 42),
                PLACES.span(FieldPath.of("steps").item(0).key("leader").key("means")));
    }

    @Test
    void where_nothing_is_around_it_is_the_beginning_of_the_file() {
        assertEquals(Span.at(0), PLACES.span(FieldPath.of("gear")));
        assertEquals(Span.at(0), PLACES.span(FieldPath.ROOT));
    }

    @Test
    void words_of_an_absent_text_are_absent() {
        assertEquals(Optional.empty(), PLACES.words(FieldPath.of("title")));
        assertEquals(Optional.of(WORDS), PLACES.words(FieldPath.of("weapon")));
    }
}
