package org.drillwright.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.drillwright.meaning.ActionText;
import org.drillwright.notation.Utterance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which languages are made when a text is read, and by which it is. Facts of language are common practice, no source. */
class AllLanguageTablesTest {

    private static String actions(Utterance read) {
        return read.actions().stream().map(ActionText::of).toList().toString();
    }

    @Test
    void to_ask_which_languages_there_are_makes_none() {
        TurnReader reader = TurnReader.asleep();
        assertTrue(reader.tags().size() > 1);
        assertEquals(List.of(), reader.awake());
    }

    @ParameterizedTest
    @CsvSource({"en, Parry quarte.", "fr, Parez quarte.", "it, Para quarta.", "es, Pare cuarta.", "de, Pariere Quart."})
    void what_is_read_whole_in_the_likely_language_makes_no_other(String tag, String text) {
        TurnReader reader = TurnReader.asleep().at(tag);
        assertEquals("[parry quarte]", actions(reader.read(text)));
        assertEquals(tag, reader.tag(text));
        assertEquals(List.of(tag), reader.awake());
    }

    /** What leaves something open is no less of the language that accounts for all its words. */
    @Test
    void a_choice_makes_no_other() {
        TurnReader reader = TurnReader.asleep().at("en");
        assertFalse(
                reader.read("Riposte straight, or disengage to high outside.").isRead());
        assertEquals(List.of("en"), reader.awake());
    }

    @Test
    void a_word_that_is_not_known_asks_all_of_them() {
        TurnReader reader = TurnReader.asleep().at("en");
        assertEquals("[parry quarte]", actions(reader.read("Parez quarte.")));
        assertEquals(reader.tags(), reader.awake());
    }

    @Test
    void a_word_of_the_school_is_known() {
        TurnReader reader = TurnReader.asleep().with(Map.of("whizz", "lunge")).at("en");
        assertEquals("[lunge]", actions(reader.read("Whizz.")));
        assertEquals(List.of("en"), reader.awake());
    }

    @Test
    void a_language_is_said_without_the_others() {
        TurnReader reader = TurnReader.asleep().at("en");
        assertEquals("Parez quarte.", reader.said(reader.read("Parry quarte."), "fr"));
        assertEquals(List.of("en", "fr"), reader.awake());
    }

    /** Two of the trade's French words that can be read whole as English. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Contre-riposte.     | [strike counter-riposte]
            Riposte par doublé. | [strike riposte double]
            """)
    void what_can_be_read_in_two_languages_is_read_in_the_likely_one(String text, String meant) {
        assertEquals(meant, actions(TurnReader.standard().at("fr").read(text)));
        assertEquals("fr", TurnReader.standard().at("fr").tag(text));
        assertEquals(meant, actions(TurnReader.standard().read(text, "fr")));
    }

    @Test
    void a_language_that_is_none_changes_nothing() {
        TurnReader reader = TurnReader.asleep();
        assertEquals(reader, reader.at("xx"));
        assertFalse(reader.accountsFor(Stream.of("Lunge."), "xx"));
    }
}
