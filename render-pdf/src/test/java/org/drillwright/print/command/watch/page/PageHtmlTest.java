package org.drillwright.print.command.watch.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.drillwright.model.Language;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The page in the language that the program speaks. */
class PageHtmlTest {

    @Test
    void keys_stand_for_words_and_a_gap_for_an_element() {
        assertEquals(
                "<p lang=\"fr\">Les mots que le programme comprend</p><p><b></b> ; les flèches du clavier font aussi avancer.</p>",
                PageHtml.of("<p lang=\"{lang}\">{words}</p><p>{pace|<b></b>}</p>", Locale.FRENCH)
                        .replace('\u00a0', ' '));
    }

    @Test
    void no_language_leaves_a_key_or_a_gap() {
        for (Language language : Language.all()) {
            String page = PageHtml.of(PageFiles.page(), language.locale());
            assertFalse(page.contains("{"), page);
            assertTrue(page.contains("<html lang=\"" + language.word() + "\" dir=\"ltr\">"), page);
        }
    }

    /** Agreement and order of words, by eye. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | Aucune vérification ne rend un exercice sûr.
            it | Le vostre righe, e che cosa è stato trovato
            es | Guárdelo en <span id="folder"></span> con un nombre que termine en .yaml, y póngalo en sus propias palabras.
            de | Die Karte, wie sie gedruckt wird
            """)
    void sentences_of_the_page(String language, String sentence) {
        assertTrue(
                PageHtml.of(PageFiles.page(), Locale.forLanguageTag(language)).contains(sentence));
    }
}
