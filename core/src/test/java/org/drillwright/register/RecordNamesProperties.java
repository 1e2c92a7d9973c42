package org.drillwright.register;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.drillwright.table.Unseen;

class RecordNamesProperties {

    /** Names with all that could go wrong in a cell; a roster takes none with a line end in it. */
    @Provide
    Arbitrary<String> names() {
        return Arbitraries.strings()
                .withChars("=+-@'\",;|\t abAÉ\uFF1D\u00A0\u200B")
                .ofMinLength(1)
                .ofMaxLength(8)
                .map(String::strip)
                .filter(name -> !name.isEmpty())
                .map(name -> Normalizer.normalize(name, Normalizer.Form.NFC))
                .filter(name -> !name.replaceAll("[\u00A0\u200B]", "").isBlank());
    }

    @Property(tries = 300)
    void a_name_is_read_back_as_it_was_written(@ForAll("names") String one, @ForAll("names") String other) {
        Assume.that(!Unseen.without(one).strip().equals(Unseen.without(other).strip()));
        Entry entry = Entry.workedWith(LocalDate.of(2026, 9, 14), one, "thrust", other);
        String text = Told.appended("", List.of(entry));
        ReadHistory read = RecordReader.read(
                "record.csv",
                text.getBytes(StandardCharsets.UTF_8),
                RecordAround.of(List.of(one, other), List.of("thrust")));
        assertEquals(List.of(entry), read.history().entries());
        assertEquals(List.of(), read.findings());
    }
}
