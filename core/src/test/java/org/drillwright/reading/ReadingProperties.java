package org.drillwright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.Size;
import org.drillwright.notation.Utterance;

/** What holds of every text, asked of the sentences of the specification. */
class ReadingProperties {

    private static final TurnReader READER = TurnReader.standard();

    private static final List<String> SENTENCES = Stream.of("en.tsv", "fr.tsv", "it.tsv")
            .flatMap(file -> Expectation.of(file).stream())
            .map(Expectation::sentence)
            .filter(sentence -> READER.read(sentence).isRead())
            .toList();

    @Provide
    Arbitrary<String> sentences() {
        return Arbitraries.of(SENTENCES);
    }

    /** {@code frobly} is no word of any of the languages, and endings make nothing harmless. */
    @Property(tries = 600)
    void a_word_that_is_not_listed_is_reported_wherever_it_stands(
            @ForAll("sentences") String sentence, @ForAll int place) {
        if (sentence.matches(".*[\"\u201c\u00ab'\u2018\u2019].*")) {
            return;
        }
        String[] words = sentence.split(" ");
        int at = Math.floorMod(place, words.length + 1);
        String with = String.join(" ", List.of(words).subList(0, at)) + " frobly "
                + String.join(" ", List.of(words).subList(at, words.length));
        Utterance read = READER.read(with);
        boolean told = read.unread().stream()
                .anyMatch(span -> with.substring(span.start(), span.end()).contains("frobly"));
        assertTrue(told || isOfAnother(with), with);
        assertTrue(!told || !read.isRead(), with);
    }

    @Property(tries = 300)
    void each_word_is_looked_at_once_and_its_place_lies_in_the_text(@ForAll("sentences") String sentence) {
        Utterance read = READER.read(sentence + " frobly. " + sentence);
        int before = 0;
        for (var span : read.unread()) {
            assertTrue(span.start() >= before && span.end() <= sentence.length() * 2 + 9, sentence);
            before = span.end();
        }
    }

    @Property(tries = 300)
    void capitals_change_nothing(@ForAll("sentences") String sentence) {
        String body = sentence.replaceFirst("[.!]$", "");
        if (!body.contains(".") && body.chars().allMatch(unit -> unit < 128)) {
            assertEquals(
                    READER.read(body).actions(),
                    READER.read(body.toUpperCase(Locale.ROOT)).actions());
        }
    }

    /** A new reader makes its tables anew, so each reads ten sentences. */
    @Property(tries = 30)
    void reading_is_the_same_each_time(@ForAll @Size(10) List<@From("sentences") String> sentences) {
        TurnReader anew = READER.with(java.util.Map.of("xyzzy", "parry"));
        for (String sentence : sentences) {
            assertEquals(READER.read(sentence), anew.read(sentence));
        }
    }

    /** Whether the word stands in what another does, which plays nothing however it is put. */
    private static boolean isOfAnother(String with) {
        return READER.tags().stream()
                .flatMap(tag -> READER.account(with, tag).stream())
                .anyMatch(division -> division.matches(".*ABOUT [^|]*\\bfrobly\\b.*"));
    }
}
