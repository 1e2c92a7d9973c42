package org.drillwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.ComponentOrientation;
import java.util.Locale;
import org.drillwright.model.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DirectionTest {

    /** The JDK knows of some languages which way they are read, of no other than those that it knows. */
    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void each_language_is_read_as_its_words_say(Language language) {
        assertEquals(
                !ComponentOrientation.getOrientation(language.locale()).isLeftToRight(),
                Direction.of(language.locale()).isRightToLeft());
    }

    @Test
    void a_language_without_words_is_spoken_to_in_english() {
        assertEquals(Direction.LEFT_TO_RIGHT, Direction.of(Locale.forLanguageTag("qaa")));
        assertEquals("ltr", Direction.LEFT_TO_RIGHT.word());
    }
}
