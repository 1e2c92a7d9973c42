package org.drillwright.mark;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with a mark, in four languages: the grammar was looked at by eye, common practice, no source. */
class MarksInLanguagesTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fr | K7QM-K | un de ses signes est faux, ou deux sont intervertis",
                "it | K7QO-J | «O» non compare in nessun contrassegno di piano",
                "es | K7Q | una marca tiene 5 caracteres, como K7QM-J",
                "de | K7QM-K | eines ihrer Zeichen ist falsch, oder zwei sind vertauscht"
            })
    void of_a_plan(String language, String typed, String said) {
        assertEquals(said, PlanMark.wrongWith(typed).in(new Locale(language)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fr | Une marque a 8 signes_; «_7K3M_» en a 4.",
                "it | Un contrassegno ha 8 segni; «7K3M» ne ha 4.",
                "es | Una marca tiene 8 caracteres; «7K3M» tiene 4.",
                "de | Eine Marke hat 8 Zeichen; „7K3M“ hat 4."
            })
    void of_a_card(String language, String said) {
        assertEquals(said, PrintMark.wrongWith("7K3M").in(new Locale(language)).replace('\u00a0', '_'));
    }
}
