package org.drillwright.print.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which scripts change their letters is told in The Unicode Standard: Devanagari 12.1, Tamil 12.6, Khmer 16.4, Myanmar 16.3,
 * Thai and Lao marks 16.1 and 16.2, points of Hebrew 9.1 and of Arabic 9.2.
 */
class StretchTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Anne-Élise, 12 | Anne-Élise, 12",
                "剣士 キム | 剣士 キム",
                "דוד | דוד",
                "سيف | سيف",
                "किरण | <किरण>",
                "दीप्ति कुमार, 12 | <दीप्ति>' '<कुमार>', 12'",
                "post १२ | post १२",
                "மொழி → ស្រី | <மொழி>' → '<ស្រី>",
                "น้ำฝน | <น้ำฝน>",
                "שָׂרָה ודוד | <שָׂרָה>' ודוד'",
                "مُحَمَّد | <مُحَمَّد>",
                "x\u0323y | <x\u0323y>"
            })
    void a_word_whose_letters_change_is_set_at_once(String run, String cut) {
        String found = Stretch.of(run).stream()
                .map(stretch -> stretch.shaped() ? "<" + stretch.text() + ">" : "'" + stretch.text() + "'")
                .collect(Collectors.joining());
        assertEquals(cut.contains("<") ? cut : "'" + cut + "'", found);
    }
}
