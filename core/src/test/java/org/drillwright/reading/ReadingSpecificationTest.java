package org.drillwright.reading;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.reading.Expectation.Outcome;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * How turns are read: sentences by hand, grouped by construction, each file saying its sources. A sentence may be said to be
 * unread; it may never be read as something else.
 */
class ReadingSpecificationTest {

    private static final TurnReader READER = TurnReader.standard();

    /** Each sentence is read once, whatever is asked of how it was read. */
    private static final Map<Expectation, Outcome> OUTCOMES = new ConcurrentHashMap<>();

    private static Outcome outcome(Expectation row) {
        return OUTCOMES.computeIfAbsent(row, one -> one.outcome(READER.read(one.sentence())));
    }

    @TestFactory
    Stream<DynamicTest> no_sentence_is_misread() {
        return READER.tags().stream()
                .map(tag -> tag + ".tsv")
                .flatMap(file -> byGroup(file).entrySet().stream()
                        .map(group -> DynamicTest.dynamicTest(
                                file + ": " + group.getKey(), () -> none_is_misread(group.getValue()))));
    }

    private static Map<String, List<Expectation>> byGroup(String file) {
        return Expectation.of(file).stream()
                .collect(Collectors.groupingBy(Expectation::group, LinkedHashMap::new, Collectors.toList()));
    }

    private static void none_is_misread(List<Expectation> rows) {
        assertAll(rows.stream()
                .map(row -> () -> assertTrue(
                        outcome(row) != Outcome.MISREAD,
                        () -> row.sentence() + " was read as "
                                + READER.read(row.sentence()).actions())));
    }

    /** What is read as meant of each file; raise the numbers when more is read. */
    @ParameterizedTest
    @CsvSource({"en.tsv, 1700, 97", "fr.tsv, 790, 99", "it.tsv, 850, 99", "es.tsv, 730, 99", "de.tsv, 610, 99"})
    void nearly_all_is_read_as_meant(String file, int rows, int least) {
        List<Expectation> all = Expectation.of(file);
        long meant = all.stream().filter(row -> outcome(row) == Outcome.MEANT).count();
        assertTrue(all.size() >= rows, () -> all.size() + " rows");
        assertTrue(100 * meant >= least * (long) all.size(), () -> meant + " of " + all.size() + " read as meant");
    }

    @ParameterizedTest
    @CsvSource({
        "Advance., en",
        "Parez quarte., fr",
        "Parata di quarta., it",
        "Parada de cuarta., es",
        "Quartparade., de"
    })
    void a_text_is_read_in_its_language(String text, String tag) {
        assertEquals(tag, READER.tag(text));
    }
}
