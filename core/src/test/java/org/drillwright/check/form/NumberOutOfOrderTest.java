package org.drillwright.check.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.drillwright.check.Judged;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberOutOfOrderTest {

    /** Numbers as they are written, a point for none; the lines of the numbers that are found. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "1 2 3, ''",
        ". . ., ''",
        "1 . 3, ''",
        ". 2 ., ''",
        "1 3 4, 6 10",
        "2 3 4, 2 6 10",
        "0 1 2, 2 6 10",
        "1 1 3, 6",
        "1 2 4, 10",
        "3 2 1, 2 10",
        ". 1 ., 6"
    })
    void numbers_run_from_one_without_a_gap(String numbers, String lines) {
        String steps = Arrays.stream(numbers.split(" "))
                .map(number -> "  - "
                        + (number.equals(".") ? "note: None." : "number: " + number)
                        + "\n    leader: Hold.\n    follower: Hold.\n    distance: lunge\n")
                .collect(Collectors.joining());
        List<String> found = Judged.drill("steps:\n" + steps).findings("number-out-of-order").stream()
                .map(finding -> finding.replaceFirst("error (\\d+):13 '\\d'", "$1"))
                .toList();
        assertEquals(lines.isEmpty() ? List.of() : List.of(lines.split(" ")), found);
    }
}
