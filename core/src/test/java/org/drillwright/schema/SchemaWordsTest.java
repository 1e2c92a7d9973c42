package org.drillwright.schema;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.drillwright.model.School;
import org.drillwright.plan.roster.Roster;
import org.drillwright.read.ClassReader;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A schema speaks to the author in a language; its keys are the same in all. */
class SchemaWordsTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | Un cours | La longueur de la salle. | Le salut d’ouverture.
            it | Una lezione | La lunghezza della sala. | Il saluto d’apertura.
            es | Una clase | El largo de la sala. | El saludo de apertura.
            de | Eine Stunde | Die Länge der Halle. | Der Gruß zu Beginn.
            """)
    void keys_are_told_of(String language, String title, String length, String opening) throws JsonProcessingException {
        JsonNode schema = Verdicts.JSON.readTree(JsonSchema.ofAClass(
                new ClassReader(School.DEFAULT, Roster.EMPTY, Set.of()), Map.of(), Locale.forLanguageTag(language)));
        assertEquals(title, schema.path("title").asText());
        assertEquals(
                length,
                schema.at("/properties/hall/properties/length/description").asText());
        assertEquals(
                opening,
                schema.at("/properties/timing/properties/opening/description").asText());
    }
}
