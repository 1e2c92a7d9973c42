package org.drillwright.plan.pair;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drillwright.plan.rounds.Extras;
import org.drillwright.register.History;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a plan of pairs says in other languages. The sentences were read for their grammar; their numbers are made up. */
class SpokenPairsTest {

    /** The article of whoever teaches is another behind 'mit'. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | 5 élèves, c’est un nombre impair : à chaque manche, il en reste un, qui travaille avec l’enseignant ou Bo, à tour de rôle.
            it | 5 allievi sono un numero dispari: a ogni turno ne resta uno, che lavora con l’insegnante o Bo, a rotazione.
            es | 5 alumnos es un número impar: en cada ronda sobra uno, que trabaja con quien enseña o Bo, por turno.
            de | 5 Personen sind eine ungerade Zahl: In jeder Runde bleibt eine übrig und übt mit der Übungsleitung oder Bo, reihum.
            """)
    void one_left_over_works_with_whoever_helps(String language, String sentence) {
        Shortage shortage = new Shortage(
                "thrust", 2, 3, new Extras(1, 0, 0, 0), List.of(History.INSTRUCTOR, "Bo"), Extras.NONE, Extras.NONE);
        assertEquals(sentence, shown(shortage.sentence().in(Locale.forLanguageTag(language))));
    }

    /** One is told of in the singular, more in the plural. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | 1 | 1 paire se retrouve, à la manche 4 | 1 change de ligne une fois
            fr | 2 | 2 paires se retrouvent, à la manche 4 | 2 changent de ligne une fois
            it | 1 | 1 coppia si ritrova, nel turno 4 | 1 cambia fila una volta
            it | 2 | 2 coppie si ritrovano, nel turno 4 | 2 cambiano fila una volta
            es | 1 | 1 pareja se repite, en la ronda 4 | 1 cambia de fila una vez
            es | 2 | 2 parejas se repiten, en la ronda 4 | 2 cambian de fila una vez
            de | 1 | 1 Paar trifft sich wieder, in Runde 4 | 1 wechselt einmal die Reihe
            de | 2 | 2 Paare treffen sich wieder, in Runde 4 | 2 wechseln einmal die Reihe
            """)
    void the_price_of_a_way_is_counted(String language, int number, String price, String effort) {
        WalkChoice choice =
                new WalkChoice(2, List.of(), new WalkChoice.Changes(number, 1), Map.of(4, number), number, true);
        Locale locale = Locale.forLanguageTag(language);
        assertEquals(price, shown(choice.price().in(locale)));
        assertEquals(effort, shown(choice.effort().in(locale)));
    }

    /** A space at which no line may break looks like one. */
    private static String shown(String words) {
        return words.replace('\u00a0', ' ');
    }
}
