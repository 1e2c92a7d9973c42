package org.drillwright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.drillwright.reading.Expectation.Outcome;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What can be said by any construction of any action is read, whoever puts them together; none of it is misread. */
class ParaphrasesTest {

    private static final TurnReader READER = TurnReader.standard();

    @ParameterizedTest
    @CsvSource({"en, 170, 98", "fr, 15, 99", "it, 15, 99", "es, 15, 99", "de, 8, 99"})
    void a_sample_is_read_as_meant_and_none_misread(String tag, int oneIn, int leastOfHundred) {
        List<Paraphrases.Sentence> sentences = Paraphrases.of(tag).drawn(new Random(1), oneIn);
        assertEquals(List.of(), misread(sentences));
        assertMeant(sentences, leastOfHundred);
    }

    @Tag("deep")
    @ParameterizedTest
    @CsvSource({"en, 3, 98, 2", "fr, 1, 99, 1", "it, 1, 99, 2", "es, 1, 99, 1", "de, 1, 99, 1"})
    void nearly_all_is_read_as_meant(String tag, int oneIn, int leastOfHundred, int mostMisreadOfThousand) {
        List<Paraphrases.Sentence> sentences = Paraphrases.of(tag).drawn(new Random(2), oneIn);
        List<String> misread = misread(sentences);
        assertTrue(1000 * misread.size() <= mostMisreadOfThousand * sentences.size(), misread::toString);
        assertMeant(sentences, leastOfHundred);
    }

    private static List<String> misread(List<Paraphrases.Sentence> sentences) {
        return sentences.stream()
                .filter(one -> outcome(one) == Outcome.MISREAD)
                .map(one -> one.expected().sentence())
                .toList();
    }

    private static void assertMeant(List<Paraphrases.Sentence> sentences, int leastOfHundred) {
        long meant =
                sentences.stream().filter(one -> outcome(one) == Outcome.MEANT).count();
        assertTrue(100 * meant >= leastOfHundred * (long) sentences.size(), () -> meant + " of " + sentences.size());
    }

    private static Outcome outcome(Paraphrases.Sentence sentence) {
        return sentence.expected().outcome(READER.read(sentence.expected().sentence()));
    }
}
