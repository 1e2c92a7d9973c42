package org.drillwright.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.text.Normalizer;
import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.drillwright.source.SourceFile;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class SpreadsheetCellProperties {

    /** Names with all that could go wrong in a cell; a roster takes none with a line end in it. */
    @Provide
    Arbitrary<String> names() {
        return texts("=+-@'\",;|\t abAÉ\uFF1D");
    }

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

    @Property
    void a_name_is_read_back_as_it_was_written(@ForAll("names") String one, @ForAll("names") String other) {
        Entry entry = Entry.workedWith(LocalDate.of(2026, 9, 14), one, "thrust", other);
        String text = Told.appended("", List.of(entry));
        ReadHistory read =
                RecordReader.read(new SourceFile("record.csv", text), List.of(one, other), List.of("thrust"));
        assertEquals(List.of(entry), read.history().entries());
        assertEquals(List.of(), read.findings());
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
