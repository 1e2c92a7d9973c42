package org.drillwright.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.text.Normalizer;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpreadsheetCellProperties {

    @Provide
    Arbitrary<String> cells() {
        return texts("=+-@'\",;|\n\t abAÉ\uFF1D");
    }

    private static Arbitrary<String> texts(String characters) {
        return Arbitraries.strings()
                .withChars(characters)
                .ofMinLength(1)
                .ofMaxLength(8)
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .map(name -> Normalizer.normalize(name, Normalizer.Form.NFC));
    }

    /** The beginnings that OWASP names under 'CSV injection'. */
    @Property
    void no_cell_begins_like_a_formula(@ForAll("cells") String name) {
        String cell = SpreadsheetCell.written(name).replaceFirst("^\"", "");
        assertFalse(cell.matches("(?s)[=+\\-@\\t\\r\\n\uFF1D\uFF0B\uFF0D\uFF20].*"), cell);
    }

    @ParameterizedTest
    @ValueSource(strings = {"=1+1", "+1", "-1", "@SUM(A1)", "'=1", "''=1"})
    void what_would_run_is_guarded_once(String text) {
        assertEquals("'" + text, SpreadsheetCell.written(text));
        assertEquals(text, SpreadsheetCell.unguarded("'" + text));
    }

    @ParameterizedTest
    @ValueSource(strings = {"'tis", "d'Arc", "Ash", "'"})
    void other_apostrophes_stay(String text) {
        assertEquals(text, SpreadsheetCell.written(text));
        assertEquals(text, SpreadsheetCell.unguarded(text));
    }
}
