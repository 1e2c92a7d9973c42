package org.drillwright.print.sheet.wall;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.drillwright.model.Language;
import org.drillwright.print.text.Coverage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class WordsTest {

    private static Properties written(Language language) throws IOException {
        Properties written = new Properties();
        try (InputStream in = Words.class.getResourceAsStream("words_" + language.word() + ".properties")) {
            written.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        return written;
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void everyLanguageHasEveryWordWithTheSameGapsAndNoOther(Language language) throws IOException {
        assertEquals(
                Arrays.stream(Word.values()).map(Word::key).collect(Collectors.toCollection(TreeSet::new)),
                new TreeSet<>(written(language).stringPropertyNames()));
        Coverage coverage = new Coverage(Evenings.FACES);
        for (Word word : Word.values()) {
            String text = Words.in(language).text(word);
            assertFalse(text.isBlank(), word + " in " + language);
            assertEquals(gaps(Words.in(Language.ENGLISH).text(word)), gaps(text), word + " in " + language);
            assertEquals(List.of(), coverage.missing(text));
        }
    }

    private static Set<String> gaps(String text) {
        return Pattern.compile("\\{\\d}")
                .matcher(text)
                .results()
                .map(MatchResult::group)
                .collect(Collectors.toSet());
    }

    /** A sign that stands for two things would tell neither. */
    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void signsDiffer(Language language) {
        Words words = Words.in(language);
        assertEquals(
                2,
                Set.of(words.text(Word.SIGN_THREE), words.text(Word.SIGN_NEW)).size());
    }

    /** What fills a gap is not looked through for gaps. */
    @Test
    void aTitleWithBracesStaysAsItIs() {
        assertEquals("{1} $1, 3 times in each role.", Words.in(Language.ENGLISH).text(Word.TIMES, "{1} $1", 3));
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
    void dayAndDateAreWrittenAsInTheLanguage(String language, String second, String first) {
        Words words = Words.in(new Language(language));
        assertEquals(second, words.day(LocalDate.of(2026, 12, 2)));
        assertEquals(first, words.day(LocalDate.of(2027, 1, 1)));
    }
}
