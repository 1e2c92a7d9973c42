package org.drillwright.register;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.source.Finding;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of a record, in four languages: the grammar was looked at by eye, common practice, no source. */
class RecordInLanguagesTest {

    private static ReadHistory read(String lines) {
        String text = "date,person,drill,event,with\n" + lines.replace(" & ", "\n") + "\n";
        return RecordReader.read(
                "record.csv",
                text.getBytes(StandardCharsets.UTF_8),
                RecordAround.of(List.of("Ash", "Bo", "Dee"), List.of("thrust")));
    }

    /** Language; lines, with {@code &} between two; what is said of the first that is wrong, a no-break space as {@code _}. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fr | 2026-04-04,Ash,,worked with, | Cette ligne ne dit pas avec qui_: «_worked with_» l’exige. Elle n’a pas été comptée.",
                "it | 2026-04-04,,,attended, | Questa riga non dice chi: «attended» lo richiede. Non è stata contata.",
                "de | 2026-04-04,Ash,,renamed, | In dieser Zeile fehlt der neue Name: „renamed“ verlangt ihn. Sie wurde nicht gezählt.",
                "es | 2026-04-04,Bob,,attended, | Ahora no hay ninguna persona «Bob». ¿Quería decir «Bo»? La línea se ha conservado como está.",
                "de | 2026-04-04,Ash,tango,signed off, & 2026-04-05,Ash,tango,signed off, | Es gibt jetzt keine Übung „tango“. "
                        + "Das steht in 2 Zeilen. Die Zeile wurde behalten; sie zählt wieder, sobald es den Namen wieder gibt.",
                "fr | 2026-04-04,,,batch aaaaaaaa 1, | Ce lot de 1 ligne est incomplet_: rien n’en a été compté. Consignez le cours encore une fois.",
                "it | 2026-04-04,,,batch aaaaaaaa 3, | Questo blocco di 3 righe è incompleto: non ne è stato contato nulla. "
                        + "Registrate la lezione ancora una volta.",
                "es | 03/04/2026,Ash,,attended, | «03/04/2026» podría ser 2026-04-03 (primero el día) o 2026-03-04 (primero el mes). "
                        + "Esta línea no se ha contado. Diga cuál: tables: {dates: day-first} o tables: {dates: month-first} en school.yaml.",
                "fr | 03/04/2026,Ash,,attended, & 04/05/2026,Ash,,attended, | «_03/04/2026_» pourrait être 2026-04-03 (le jour d’abord) "
                        + "ou 2026-03-04 (le mois d’abord). Aucune de ces 2 lignes n’a été comptée. "
                        + "Dites laquelle_: tables: {dates: day-first} ou tables: {dates: month-first} dans school.yaml.",
                "de | 23/04/2026,Ash,,attended, | Die Datumsangaben wurden mit dem Tag zuerst gelesen: „23/04/2026“ als 2026-04-23. "
                        + "Ein für alle Mal festlegen: tables: {dates: day-first} in school.yaml."
            })
    void of_a_line(String language, String lines, String said) {
        Finding first = read(lines).findings().get(0);
        assertEquals(said, first.words().in(new Locale(language)).replace('\u00a0', '_'));
    }

    /** The first of a month is called otherwise than other days in French and Italian. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fr | 1 | Ash et Dee ne gardent pas le même souvenir du cours du 1er août_; demandez-leur.",
                "fr | 2 | Ash et Dee ne gardent pas le même souvenir du cours du 2 août_; demandez-leur.",
                "it | 1 | Ash e Dee ricordano in modo diverso il giorno 1º agosto; chiedete a loro.",
                "it | 8 | Ash e Dee ricordano in modo diverso il giorno 8 agosto; chiedete a loro.",
                "es | 1 | Ash y Dee no recuerdan lo mismo del 1 de agosto; pregúnteles.",
                "de | 1 | Ash und Dee haben den 1. August verschieden in Erinnerung; bitte nachfragen."
            })
    void two_who_remember_a_day_differently(String language, int day, String said) {
        LocalDate date = LocalDate.of(2026, 8, day);
        Together together = read(date + ",Ash,,kept,Dee & " + date + ",Dee,,did not come,Ash")
                .together();
        assertEquals(
                List.of(said),
                together.differing("Ash", "Dee", date).stream()
                        .map(words -> words.in(new Locale(language)).replace('\u00a0', '_'))
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "fr | 45 minutes ensemble ces 8 dernières semaines",
                "it | 45 minuti insieme nelle ultime 8 settimane",
                "es | 45 minutos juntos en las últimas 8 semanas",
                "de | 45 Minuten zusammen in den letzten 8 Wochen"
            })
    void how_long_two_worked(String language, String said) {
        Together together = read("2026-08-01,Ash,,worked minutes 45,Dee").together();
        assertEquals(
                Optional.of(said),
                together.minutes("Ash", "Dee", LocalDate.of(2026, 8, 1)).map(words -> words.in(new Locale(language))));
    }
}
