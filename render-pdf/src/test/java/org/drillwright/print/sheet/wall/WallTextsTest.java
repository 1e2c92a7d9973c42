package org.drillwright.print.sheet.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drillwright.model.Language;
import org.drillwright.print.text.GlyphCoverage;
import org.drillwright.print.wording.Written;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class WallTextsTest {

    @Test
    void every_word_is_in_the_file_and_no_other() {
        assertEquals(
                Arrays.stream(WallText.values()).map(WallText::key).collect(Collectors.toCollection(TreeSet::new)),
                Written.keys(WallTexts.class, "words"));
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void every_word_can_be_printed(Language language) {
        GlyphCoverage coverage = new GlyphCoverage(Evenings.FACES);
        Written.texts(WallTexts.class, "words", language)
                .forEach(text -> assertEquals(List.of(), coverage.missing(text)));
    }

    /** A sign that stands for two things would tell neither. */
    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void signs_differ(Language language) {
        WallTexts words = WallTexts.in(language);
        assertEquals(
                2,
                Set.of(words.text(WallText.SIGN_THREE), words.text(WallText.SIGN_NEW))
                        .size());
    }

    /** What fills a gap is not looked through for gaps. */
    @Test
    void a_title_with_braces_stays_as_it_is() {
        assertEquals(
                "{1} $1, 3 times in each role.", WallTexts.in(Language.ENGLISH).counted(WallText.TIMES, 3, "{1} $1"));
    }

    /**
     * Order, capitals and points of dates: the patterns 'full' of the Unicode CLDR for each language, from memory; 1er:
     * French spelling, 1º: Italian, both from memory. 2026-12-02 is a Wednesday (ISO 8601).
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en | Wednesday 2026-12-02 | Friday 2027-01-01",
                "fr | Mercredi 2 décembre 2026 | Vendredi 1er janvier 2027",
                "it | Mercoledì 2 dicembre 2026 | Venerdì 1º gennaio 2027",
                "es | Miércoles, 2 de diciembre de 2026 | Viernes, 1 de enero de 2027",
                "de | Mittwoch, 2. Dezember 2026 | Freitag, 1. Januar 2027"
            })
    void day_and_date_are_written_as_in_the_language(String language, String second, String first) {
        WallTexts words = WallTexts.in(new Language(language));
        assertEquals(second, words.day(LocalDate.of(2026, 12, 2)));
        assertEquals(first, words.day(LocalDate.of(2027, 1, 1)));
    }
}
