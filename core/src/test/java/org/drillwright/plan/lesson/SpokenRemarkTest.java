package org.drillwright.plan.lesson;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.drillwright.model.Weapon;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is to be known of a lesson in other languages; the sentences were read for their grammar. */
class SpokenRemarkTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | parade demande fente, qu’Ash et Bo ne savent pas encore faire. | coup n’est pas un exercice pour l’épée.
            it | parade richiede fente, che Ash e Bo non sanno ancora fare.      | coup non è un esercizio per la spada.
            es | parade requiere fente, que Ash y Bo todavía no saben hacer.     | coup no es un ejercicio para la espada.
            de | parade setzt fente voraus; Ash und Bo können es noch nicht.     | coup ist keine Übung für den Degen.
            """)
    void what_some_lack_and_what_is_for_another_weapon(String language, String unmet, String weapon) {
        Locale locale = Locale.forLanguageTag(language);
        assertEquals(
                unmet,
                new Remark.Unmet("parade", "fente", List.of("Ash", "Bo"), false)
                        .sentence()
                        .in(locale));
        assertEquals(
                weapon, new Remark.OtherWeapon("coup", Weapon.EPEE).sentence().in(locale));
    }
}
