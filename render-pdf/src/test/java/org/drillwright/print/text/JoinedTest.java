package org.drillwright.print.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The forms in which Arabic letters stand. Which letters join on which side: The Unicode Standard, section 9.2, table 9-3
 * (dual and right joining); the forms: its charts of Arabic Presentation Forms-A and -B. Written from these by hand.
 */
class JoinedTest {

    @ParameterizedTest
    @CsvSource({
        "seen yeh feh: initial medial final, 0633 064A 0641, FEB3 FEF4 FED2",
        "meem hah meem dal: dal ends, 0645 062D 0645 062F, FEE3 FEA4 FEE4 FEAA",
        "alef and dal join nothing behind, 0622 0632 0627 062F 0647, FE81 FEAF FE8D FEA9 FEE9",
        "lam and alef are one sign, 0628 0644 0627, FE91 FEFC",
        "lam and alef alone, 0644 0627, FEFB",
        "hamza joins nothing, 0627 0621, FE8D FE80",
        "a word ends at a space, 0631 0636 0627 0020 0628, FEAD FEBF FE8E 0020 FE8F",
        "Persian keheh and yeh, 06A9 06CC 0627 0646, FB90 FBFF FE8E FEE5",
        "a non-joiner keeps apart and is not seen, 0645 06CC 200C 062E, FEE3 FBFD FEA5",
        "a letter drawn out joins both, 0628 0640 0628, FE91 0640 FE90"
    })
    void letters_join_as_the_standard_says(String what, String letters, String forms) {
        assertEquals(forms, numbers(Joined.of(text(letters))), what);
    }

    @Test
    void other_scripts_stay_as_they_are() {
        String others = "Ash, \u00C9lodie, \u05E9\u05DC\u05D5\u05DD, \u0416\u0435\u043D\u044F";
        assertEquals(others, Joined.of(others));
    }

    private static String text(String numbers) {
        return Arrays.stream(numbers.split(" "))
                .map(number -> Character.toString(Integer.parseInt(number, 16)))
                .collect(Collectors.joining());
    }

    private static String numbers(String text) {
        return text.codePoints().mapToObj(each -> String.format("%04X", each)).collect(Collectors.joining(" "));
    }
}
