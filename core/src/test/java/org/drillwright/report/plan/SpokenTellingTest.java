package org.drillwright.report.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drillwright.plan.pair.Changeover;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Walk;
import org.drillwright.plan.roster.Naming;
import org.drillwright.plan.schedule.CatchUp;
import org.drillwright.plan.schedule.GroupPlan;
import org.drillwright.plan.term.TermGroup;
import org.drillwright.register.History;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What plans are told as in other languages; the sentences were read for their grammar. */
class SpokenTellingTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | Manches 2 à 3 : la ligne A reste, à partir du poste 1 : Ash, personne, l’enseignant.
            it | Turni 2–3: la fila A resta, dalla postazione 1 in poi: Ash, nessuno, l’insegnante.
            es | Rondas 2 a 3: la fila A se queda, desde el puesto 1: Ash, nadie, quien enseña.
            de | Runden 2 bis 3: Reihe A bleibt, von Posten 1 an: Ash, niemand, die Übungsleitung.
            """)
    void a_line_that_stays(String language, String sentence) {
        Walk walk = new Walk(2, 3, List.of("Ash", Walk.REST, History.INSTRUCTOR), List.of("Bo", "Cy", "Dee"));
        assertEquals(
                sentence,
                shown(ChangeWords.of(List.of(new Changeover.LineA(walk, false)))
                        .get(0)
                        .in(Locale.forLanguageTag(language))));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | Ash avec l’enseignant
            it | Ash con l’insegnante
            es | Ash con quien enseña
            de | Ash mit der Übungsleitung
            """)
    void one_with_whoever_teaches(String language, String words) {
        Group group = new Group(Group.Kind.HELPED, 1, List.of("Ash"), Optional.of(History.INSTRUCTOR));
        assertEquals(words, GroupWords.people(group, Naming.full()).in(Locale.forLanguageTag(language)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | coup : Ash, Bo ; ce sera nouveau le 1er octobre 2026 : à mettre avec quelqu’un qui le connaît.
            it | coup: Ash, Bo; sarà nuovo il 1º ottobre 2026: da mettere con qualcuno che lo conosce.
            es | coup: Ash, Bo; será nuevo el 1 de octubre de 2026: juntar con alguien que lo sepa.
            de | coup: Ash, Bo; dafür neu am 1. Oktober 2026, also mit jemandem zusammenstellen, der es kann.
            """)
    void what_was_missed_comes_again(String language, String sentence) {
        CatchUp missed =
                new CatchUp("coup", List.of("Ash", "Bo"), Optional.of(LocalDate.of(2026, 10, 1)), Optional.empty());
        GroupPlan group = new GroupPlan(
                new TermGroup("all", List.of("Ash", "Bo"), List.of("coup")),
                List.of(),
                List.of(missed),
                List.of(),
                Map.of(),
                Optional.empty(),
                List.of(),
                List.of(),
                Map.of());
        assertEquals(
                sentence,
                shown(TermText.catchUps(group, Naming.full(), drill -> drill)
                        .get(0)
                        .in(Locale.forLanguageTag(language))));
    }

    /** A space at which no line may break looks like one. */
    private static String shown(String words) {
        return words.replace('\u00a0', ' ');
    }
}
