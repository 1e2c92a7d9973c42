package org.drillwright.print.layout.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.model.Language;
import org.drillwright.print.pdf.Family;
import org.drillwright.print.text.GlyphCoverage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LabelsTest {

    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void every_language_has_every_label_and_no_other(Language language) throws IOException {
        Properties words = new Properties();
        try (InputStream in = Labels.class.getResourceAsStream("labels_" + language.word() + ".properties")) {
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        TreeSet<String> keys =
                Arrays.stream(Label.values()).map(Label::key).collect(Collectors.toCollection(TreeSet::new));
        others(language).forEach(other -> keys.add(Label.MADE_FROM.key() + "." + other.word()));
        assertEquals(keys, new TreeSet<>(words.stringPropertyNames()));
    }

    private static Stream<Language> others(Language language) {
        return Language.all().stream().filter(other -> !other.equals(language));
    }

    /** A language that came later is not named, and it is said all the same. */
    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void what_a_card_was_made_from_is_said_in_words_of_its_own(Language language) {
        Labels labels = Labels.in(language);
        Set<String> said = others(language).map(labels::madeFrom).collect(Collectors.toSet());
        said.add(labels.madeFrom(new Language("xx")));
        assertEquals(Language.all().size(), said.size());
        said.forEach(words -> assertEquals(List.of(), new GlyphCoverage(Family.dejaVu()).missing(words)));
    }

    @ParameterizedTest
    @MethodSource("org.drillwright.model.Language#all")
    void every_label_can_be_printed(Language language) {
        GlyphCoverage coverage = new GlyphCoverage(Family.dejaVu());
        for (Label label : Label.values()) {
            assertEquals(List.of(), coverage.missing(Labels.in(language).text(label)));
        }
    }

    @Test
    void gaps_are_filled() {
        assertEquals("2 sur 3", Labels.in(new Language("fr")).text(Label.ONE_OF, 2, 3));
    }
}
