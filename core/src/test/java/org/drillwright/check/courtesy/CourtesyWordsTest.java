package org.drillwright.check.courtesy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.drillwright.check.Intent;
import org.drillwright.notation.Utterance;
import org.drillwright.reading.TurnReader;
import org.drillwright.wording.Message;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The salutes that are proposed are read as salutes by both, with nothing left over. */
class CourtesyWordsTest {

    @ParameterizedTest
    @CsvSource({"en", "fr", "it", "es", "de"})
    void what_is_proposed_is_read_as_a_salute_by_both(String language) {
        for (String text :
                new String[] {"usual.opening", "usual.closing", "usual.solo.opening", "usual.solo.closing"}) {
            String words = Message.of(SaluteMissing.class, text).in(Locale.forLanguageTag(language));
            Utterance read = TurnReader.standard().read(words);
            assertTrue(read.isRead() && Intent.isSaluteByBoth(read), words);
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | Écrivez : opening: Gruß. En garde.
            it | Scrivete: opening: Gruß. En garde.
            es | Escriba: opening: Gruß. En garde.
            de | Schreiben: opening: Gruß. En garde.
            """)
    void the_salute_is_written_before_what_stands_there(String language, String said) {
        Message way = Message.of(SaluteMissing.class, "salute-missing.opening.way", "Gruß.", "En garde.");
        assertEquals(said, way.in(Locale.forLanguageTag(language)).replace('\u00a0', ' '));
    }
}
