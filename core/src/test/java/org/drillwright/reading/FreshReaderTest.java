package org.drillwright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.drillwright.meaning.ActionText;
import org.drillwright.reading.Expectation.Outcome;
import org.junit.jupiter.api.Test;

/**
 * The German specification, the smallest one, by a reader that was made for it: the program's own is made once and remembers what it has
 * read, so that a change of the program that is tried on it (docs/mutants.md) would not be seen.
 */
class FreshReaderTest {

    /** The first two hold words that leave open what is done; the last one is a gap. */
    private static final List<String> NOT_UNDERSTOOD =
            List.of("Falle zur Glimbe aus.", "Pariere fast Quart.", "Triff ihn beim Ausholen am Arm.");

    private final TurnReader reader = TurnReader.asleep();

    @Test
    void every_sentence_is_read_as_meant() {
        List<String> otherwise = Expectation.of("de.tsv").stream()
                .filter(row -> row.outcome(reader.read(row.sentence(), "de")) != Outcome.MEANT)
                .map(Expectation::sentence)
                .toList();
        assertEquals(NOT_UNDERSTOOD, otherwise);
    }

    @Test
    void every_action_is_said_and_read_back() {
        List<String> otherwise = SayableActions.all().stream()
                .filter(action -> !reader.said(action, "de")
                        .map(said -> reader.read(said, "de").actions())
                        .equals(Optional.of(List.of(action))))
                .map(ActionText::of)
                .toList();
        assertEquals(List.of(), otherwise);
    }
}
