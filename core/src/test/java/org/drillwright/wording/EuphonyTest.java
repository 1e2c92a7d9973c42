package org.drillwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Spanish y and o: Real Academia Española, Ortografía de la lengua española (2010), and Diccionario panhispánico de dudas, "y"
 * and "o"; Italian l'8, l'11, and ad, ed before the same vowel: usage as the Accademia della Crusca advises it; French d' and
 * qu' before names: Imprimerie nationale. All from memory.
 */
class EuphonyTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    es | Ana      | Inés     | Ana e Inés
                    es | Ana      | Iago     | Ana y Iago
                    es | Ana      | Hilario  | Ana e Hilario
                    es | carbón   | hierro   | carbón y hierro
                    es | Ana      | Yago     | Ana y Yago
                    es | Inés     | Ana      | Inés y Ana
                    it | quarta   | ottava   | quarta e ottava
                    it | Anna     | Elena    | Anna ed Elena
                    fr | un       | huit     | un et huit
                    de | Ina      | Ida      | Ina und Ida
                    """)
    void all_of_two(String language, String one, String other, String said) {
        assertEquals(said, Message.all(words(one, other)).in(Locale.forLanguageTag(language)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    es | séptima  | octava   | séptima u octava
                    es | 7        | 8        | 7 u 8
                    es | 10       | 11       | 10 u 11
                    es | 10       | 110      | 10 o 110
                    es | 8        | 9        | 8 o 9
                    es | uno      | hombres  | uno u hombres
                    it | settima  | ottava   | settima o ottava
                    fr | 7        | 8        | 7 ou 8
                    en | 7        | 8        | 7 or 8
                    """)
    void one_of_two(String language, String one, String other, String said) {
        assertEquals(said, Message.or(words(one, other)).in(Locale.forLanguageTag(language)));
    }

    /** The words come from the rooms that say them; {@code little.practice} has 'il {0} %', {@code round.from} 'dal {0}'. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    il {0}    | 8   | l’8
                    il {0}    | 11  | l’11
                    il {0}    | 1   | l’1
                    il {0}    | 80  | l’80
                    il {0}    | 7   | il 7
                    il {0}    | 18  | il 18
                    il {0}    | 110 | il 110
                    il {0}    | 1º gennaio 2027 | il 1º gennaio 2027
                    dal {0}   | 8   | dall’8
                    Al {0}    | 8   | All’8
                    sil {0}   | 8   | sil 8
                    a {0}     | Anna | ad Anna
                    a {0}     | Elena | a Elena
                    """)
    void an_italian_article_before_a_number(String words, String value, String said) {
        assertEquals(said, filled("it", words, value));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    le {0}    | 8     | le 8
                    le {0}    | 11    | le 11
                    de {0}    | Anna  | d’Anna
                    de {0}    | Zoé   | de Zoé
                    de {0}    | Hugo  | de Hugo
                    de {0}    | A     | de A
                    de {0}    | « Anna » | de « Anna »
                    parce que {0} | Émile | parce qu’Émile
                    """)
    void french_elides_before_names_and_never_before_numbers(String words, String value, String said) {
        assertEquals(said, filled("fr", words, value));
    }

    private static String filled(String language, String words, String value) {
        return Bundle.in(Message.class, Locale.forLanguageTag(language))
                .filled(words, List.of(value), (said, form) -> String.valueOf(said));
    }

    private static List<Message> words(String one, String other) {
        return List.of(Message.plain(one), Message.plain(other));
    }
}
