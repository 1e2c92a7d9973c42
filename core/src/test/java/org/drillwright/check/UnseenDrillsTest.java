package org.drillwright.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.drillwright.notation.Utterance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Drills in five languages by people who had seen no list of words, after they were mended for: a right one raises no
 * error and is read to the last word; of one that was written with a fault just that is found.
 */
class UnseenDrillsTest {

    private static final Pattern EXPECTED = Pattern.compile("(?m)^# expect: (plays|[a-z-]+ at \\d+)$");

    private static final Corpus UNSEEN = Corpus.unseen();

    static Stream<String> ids() {
        return UNSEEN.ids().stream();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ids")
    void comes_out_as_its_author_says(String id) {
        Sample sample = UNSEEN.sample(id);
        Matcher expected = EXPECTED.matcher(sample.text());
        assertTrue(expected.find(), "it says what is expected");
        assertEquals(
                expected.group(1).equals("plays") ? List.of() : List.of(expected.group(1)),
                sample.errors().stream().map(sample::said).toList(),
                () -> sample.said(sample.errors()).toString());
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("ids")
    void is_read_to_the_last_word(String id) {
        Script script = UNSEEN.sample(id).subject().script();
        Stream<Utterance> turns = script.steps().stream().flatMap(step -> step.values().stream());
        Stream.concat(Stream.of(script.start(), script.opening(), script.closing()), turns)
                .forEach(turn -> assertEquals(List.of(), turn.unread()));
    }
}
