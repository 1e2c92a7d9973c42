package org.drillwright.check.folder;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.drillwright.wording.Message;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a folder is grammatical in each language: written by hand, checked by eye. */
class FolderWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | La série « printemps » énumère « quarte » deux fois. | Supprimez l’un des deux.
            it | La serie «printemps» elenca «quarte» due volte. | Toglietene uno.
            es | La serie «printemps» enumera «quarte» dos veces. | Quite uno de los dos.
            de | Im Satz „printemps“ steht „quarte“ zweimal. | Einen der beiden Einträge löschen.
            """)
    void a_name_is_quoted_as_the_language_quotes(String language, String what, String way) {
        Locale locale = Locale.forLanguageTag(language);
        Message twice = Message.of(BrokenSet.class, "broken-set.twice", "printemps", "quarte");
        assertEquals(what, twice.in(locale).replace('\u00a0', ' '));
        assertEquals(way, Message.of(BrokenSet.class, "broken-set.twice.way").in(locale));
    }
}
