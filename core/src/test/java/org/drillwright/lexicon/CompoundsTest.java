package org.drillwright.lexicon;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Words that are written as one. German, common practice, no source. */
class CompoundsTest {

    private final Lexicon lexicon = LexiconFile.read(List.of(
            "link s n",
            "compound POS|KIND ACTN",
            "compound KIND POS",
            "compound T hieb",
            "compound ACTN ACTN",
            "compound AWAY V|zu",
            "compound zu V",
            "capitals",
            "short rip riposte",
            "POS quart|sixt",
            "KIND kreis|halbkreis",
            "ACTN parade|riposte|stoß|hieb|bindung",
            "T kopf|flanke",
            "AWAY zurück",
            "V weichen",
            "TO zu"));

    private String parted(String text) {
        return lexicon.words(text).stream()
                .map(Token::folded)
                .reduce((one, more) -> one + " " + more)
                .orElse("");
    }

    @ParameterizedTest
    @CsvSource({
        "Quartparade, quart parade",
        "Kreissixtparade, kreis sixt parade",
        "Halbkreisparade, halbkreis parade",
        "Flankenhieb, flanke hieb",
        "Bindungsstoß, bindung stoss",
        "zurückweichen, zuruck weichen",
        "zurückzuweichen, zuruck zu weichen"
    })
    void a_word_is_parted_at_known_parts(String word, String parts) {
        assertEquals(parts, parted(word));
    }

    /** Parts that are not known, not of these kinds, or joined by other letters. */
    @ParameterizedTest
    @CsvSource({"Quartfrobe", "Kopffrobelhieb", "Kopfparade", "Paradequart", "Quartxparade", "Quart", "Parade"})
    void any_other_word_stands_as_it_is(String word) {
        assertEquals(Spelling.fold(word), parted(word));
    }

    /** What is parted keeps the place of the whole, so that what is said of it is said of that. */
    @ParameterizedTest
    @CsvSource({"Die Quartparade., 4, 15"})
    void parts_stand_where_the_word_stands(String text, int start, int end) {
        List<Token> words = lexicon.words(text);
        assertEquals(
                List.of(start, start),
                List.of(words.get(1).span().start(), words.get(2).span().start()));
        assertEquals(
                List.of(end, end),
                List.of(words.get(1).span().end(), words.get(2).span().end()));
    }

    /** Where nouns begin with a capital, one behind a word cut short begins no sentence. */
    @ParameterizedTest
    @CsvSource({"Rip. Kopf., 1", "Riposte. Kopf., 2"})
    void a_capital_behind_a_word_cut_short_begins_no_sentence(String text, int sentences) {
        assertEquals(sentences, lexicon.sentences(text).size());
    }
}
