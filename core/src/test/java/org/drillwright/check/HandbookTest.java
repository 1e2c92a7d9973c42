package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Phrases from handbooks and from the federation's rules, played to the outcome that their source states. Each file names
 * its source and says {@code expect: plays}, or {@code expect: RULE at COUNT} where the source has it fail.
 */
class HandbookTest {

    private static final Pattern SOURCE = Pattern.compile("(?m)^# source: (.{10,})$");
    private static final Pattern EXPECTED = Pattern.compile("(?m)^# expect: (plays|([a-z-]+) at (\\d+))$");

    private static final Corpus HANDBOOK = Corpus.handbook();

    static Stream<String> ids() {
        return HANDBOOK.ids().stream();
    }

    static String expected(Sample sample) {
        Matcher found = EXPECTED.matcher(sample.text());
        assertTrue(found.find(), sample.id() + " says what is expected");
        return found.group(1);
    }

    static boolean plays(Sample sample) {
        return expected(sample).equals("plays");
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ids")
    void comes_out_as_its_source_says(String id) {
        Sample sample = HANDBOOK.sample(id);
        List<String> errors = sample.said(sample.errors());
        if (plays(sample)) {
            assertEquals(List.of(), errors);
            assertEquals(List.of(), sample.said(sample.warnings()));
        } else {
            assertEquals(
                    List.of(expected(sample)),
                    sample.errors().stream().map(sample::said).toList(),
                    errors::toString);
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ids")
    void names_its_source(String id) {
        assertTrue(SOURCE.matcher(HANDBOOK.sample(id).text()).find());
    }

    @Test
    void there_are_enough_of_both_kinds() {
        List<Sample> samples = HANDBOOK.samples();
        long failing = samples.stream().filter(sample -> !plays(sample)).count();
        assertTrue(samples.size() >= 40, () -> samples.size() + " phrases");
        assertTrue(failing >= 12, () -> failing + " of them fail");
    }
}
