package org.drillwright.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a schema cannot tell, as the page of formats lists it; and what only looks as if it couldn't. */
class SchemaLimitsTest {

    private static final String HEAD = "title: x\nlevel: beginner\nform: solo\nweapon: none\nsteps: []\n";

    private static boolean schemaTakes(String text) {
        return Verdicts.schemaOfDrill(Verdicts.seen(text)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "note: null",
                "note: ~",
                "' note': x",
                "variant-of: \"12345678901234567890123456789012345678901234567890"
                        + "1234567890123456789012345678901234567890123456789012345678901234567890     \"",
                "revised: +12026-01-01",
                "hands: sa\u1dc4me"
            })
    void the_reader_is_more_lenient(String line) {
        assertTrue(Verdicts.readerTakesDrill(HEAD + line));
        assertFalse(schemaTakes(HEAD + line));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "repeat: 6.0",
                "repeat: +6",
                "tempo: 1.2345",
                "revised: 2026-02-30",
                "note: &a x",
                "note: !x y",
                "note: \"a\\u202eb\"",
                "tags: [\"\\U0001F93A\\U0001F93A\\U0001F93A\\U0001F93A\\U0001F93A\\U0001F93A\\U0001F93A\\U0001F93A"
                        + "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa\"]",
                "note: a\nnote: b",
                "note: a\n---\nnote: b"
            })
    void the_reader_is_stricter(String line) {
        assertFalse(Verdicts.readerTakesDrill(HEAD + line));
        assertTrue(schemaTakes(HEAD + line));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "swap: yes",
                "swap: TRUE",
                "hands: Opposite",
                "hands: s\u00e2me",
                "hands: sa\u0302me",
                "repeat: '007'",
                "tempo: 1,5",
                "note: 12",
                "note: false",
                "revised: 2026-09-01",
                "accept: {7: it goes on}"
            })
    void both_take(String line) {
        assertTrue(Verdicts.readerTakesDrill(HEAD + line));
        assertEquals(java.util.Set.of(), Verdicts.schemaOfDrill(Verdicts.seen(HEAD + line)));
    }

    /** Which levels a school has stands in the same file. */
    @Test
    void a_sets_level_is_any_text_to_the_schema() {
        String text = "sets: {first: {level: nowhere}}";
        JsonNode seen = Verdicts.seen(text);
        assertFalse(Verdicts.readerTakesSchool(text));
        assertTrue(Verdicts.schemaOfSchool(seen).isEmpty());
        assertFalse(Verdicts.schemaOfSchool(Verdicts.seen("sets: {first: {}}")).isEmpty());
    }
}
