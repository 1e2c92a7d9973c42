package org.drillwright.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Locale;
import org.drillwright.check.WaysOut;
import org.drillwright.check.jury.Judge;
import org.drillwright.model.Side;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.source.Findings;
import org.drillwright.terms.Terms;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Expected words are from memory of each language's grammar; how numbers are counted is from CLDR's plural rules. */
class MessageTest {

    private static final List<Message> POSITIONS =
            List.of(Terms.of(Position.QUARTE), Terms.of(Position.SIXTE), Terms.of(Position.OCTAVE));

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | quarte, sixte, or octave | quarte, sixte and octave
                    fr | quarte, sixte ou octave | quarte, sixte et octave
                    it | quarta, sesta o ottava | quarta, sesta e ottava
                    es | cuarta, sexta u octava | cuarta, sexta y octava
                    de | Quart, Sixt oder Oktav | Quart, Sixt und Oktav
                    """)
    void several_are_joined_as_the_language_joins_them(String language, String either, String all) {
        Locale locale = Locale.forLanguageTag(language);
        assertEquals(either, Message.either(POSITIONS).in(locale));
        assertEquals(all, Message.all(POSITIONS).in(locale));
    }

    /** The first of a month as French and Italian write it; from memory. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | 2026-12-02            | 2027-01-01
                    fr | 2 décembre 2026       | 1er janvier 2027
                    it | 2 dicembre 2026       | 1º gennaio 2027
                    es | 2 de diciembre de 2026 | 1 de enero de 2027
                    de | 2. Dezember 2026      | 1. Januar 2027
                    pl | 2026-12-02            | 2027-01-01
                    """)
    void a_day_is_written_as_the_language_writes_it(String language, String second, String first) {
        Locale locale = Locale.forLanguageTag(language);
        assertEquals(second, Message.day(LocalDate.of(2026, 12, 2)).in(locale));
        assertEquals(first, Message.day(LocalDate.of(2027, 1, 1)).in(locale));
    }

    /** The order and the signs are those of CLDR for each language, from memory. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | Friday 2027-01-01          | 1.5
                    fr | vendredi 1er janvier 2027  | 1,5
                    it | venerdì 1º gennaio 2027    | 1,5
                    es | viernes, 1 de enero de 2027 | 1,5
                    de | Freitag, 1. Januar 2027    | 1,5
                    """)
    void a_day_of_the_week_and_a_fraction(String language, String day, String fraction) {
        Locale locale = Locale.forLanguageTag(language);
        assertEquals(day, Message.weekday(LocalDate.of(2027, 1, 1)).in(locale));
        assertEquals(fraction, Message.decimal(new BigDecimal("1.5")).in(locale));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    en | The follower's turn changes with it.
                    fr | La consigne du suiveur change aussi.
                    it | Cambia anche la consegna del compagno.
                    es | También cambia el turno del seguidor.
                    de | Der Text des Folgenden ändert sich damit.
                    """)
    void a_gap_asks_a_term_for_the_form_it_needs(String language, String said) {
        Message message = Message.of(WaysOut.class, "partners.turn", Terms.of(Side.FOLLOWER));
        assertEquals(said, message.in(Locale.forLanguageTag(language)));
    }

    @Test
    void a_form_that_a_term_does_not_have_is_the_bare_word() {
        assertEquals("high inside line", Terms.of(Line.HIGH_INSIDE).in(Locale.ENGLISH, "acc"));
    }

    @Test
    void what_somebody_wrote_is_the_same_in_all_languages_even_if_it_looks_like_a_gap() {
        Message accepted = Message.of(Judge.class, "accepted", "so {0} it is");
        assertEquals("Vom Verfasser hingenommen: so {0} it is", accepted.in(Locale.GERMAN));
    }

    @Test
    void a_language_that_is_not_there_is_spoken_in_english() {
        assertEquals(
                "Correct those above first.",
                Message.of(Findings.class, "more.way").in(Locale.forLanguageTag("pl")));
    }

    @Test
    void nothing_joined_to_something_leaves_no_gap() {
        Message said = Message.plain("So it is.");
        assertEquals(said, Message.none().then(said));
        assertEquals(said, said.then(Message.plain("")));
        assertEquals("So it is. So it is.", said.then(said).english());
        assertTrue(Message.none().sentence().isEmpty());
    }

    @Test
    void a_sentence_begins_with_a_capital_whatever_letter_that_is() {
        assertEquals("Épée.", Message.plain("épée").sentence().in(Locale.FRENCH));
        assertEquals("\uD801\uDC00.", Message.plain("\uD801\uDC28").sentence().english());
    }

    /** The JDK has CLDR's patterns of dates, names of months and days, and decimal signs (java.text, its first provider). English is ISO 8601. */
    @ParameterizedTest
    @ValueSource(strings = {"fr", "it", "es", "de"})
    void days_and_decimals_are_as_cldr_has_them(String language) {
        Locale locale = Locale.forLanguageTag(language);
        LocalDate day = LocalDate.of(2026, 1, 2);
        for (int at = 0; at < 365; at++, day = day.plusDays(1)) {
            if (day.getDayOfMonth() != 1) {
                assertEquals(
                        cldr(FormatStyle.LONG, day, locale), Message.day(day).in(locale));
                assertEquals(
                        cldr(FormatStyle.FULL, day, locale),
                        Message.weekday(day).in(locale));
            }
        }
        assertEquals(
                NumberFormat.getInstance(locale).format(18.25),
                Message.metres(1825).in(locale));
        assertEquals(
                String.valueOf(NumberFormat.getInstance(locale).format(18)),
                Message.metres(1800).in(locale));
    }

    private static String cldr(FormatStyle style, LocalDate day, Locale locale) {
        return DateTimeFormatter.ofLocalizedDate(style).withLocale(locale).format(day);
    }
}
