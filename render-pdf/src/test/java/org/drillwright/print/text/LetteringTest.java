package org.drillwright.print.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Scripts after Unicode (UAX 24), their languages after the registry of subtags (BCP 47); from memory. */
class LetteringTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Parry quarte.              |     | false
            Parez quarte, à fond !     |     | false
            הדיפת קוורטה.              | he  | true
            הדיפת quarte לקו הגבוה     | he  | true
            Parry, הדיפה               |     | false
            απόκρουση                  | el  | false
            защита                     | und | false
            دفاع                       | und | true
            4 – 6 (!)                  |     | false
            """)
    void letters_tell_direction_and_language(String text, String language, boolean rightToLeft) {
        assertEquals(rightToLeft, Lettering.isRightToLeft(text));
        assertEquals(language, Lettering.language(text).orElse(null));
    }
}
