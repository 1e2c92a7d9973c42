package org.drillwright.print.parts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class BillTest {

    /** The schema as CycloneDX publishes it; the library that reads such bills carries a copy. */
    private static final JsonSchema SCHEMA = JsonSchemaFactory.getInstance(
                    VersionFlag.V7,
                    factory -> factory.schemaMappers(
                            mappers -> mappers.mapPrefix("http://cyclonedx.org/schema/", "classpath:")))
            .getSchema(SchemaLocation.of("http://cyclonedx.org/schema/bom-1.6.schema.json"));

    @Test
    void fitsTheSchemaOfCycloneDx() throws IOException {
        assertEquals(Set.of(), SCHEMA.validate(Bill.json()));
    }

    @Test
    void theSchemaRefusesAPartWithoutAName() throws IOException {
        JsonNode bill = Bill.json();
        ((ObjectNode) bill.get("components").get(0)).remove("name");
        Set<ValidationMessage> refused = SCHEMA.validate(bill);
        assertTrue(refused.stream().anyMatch(one -> one.getMessage().contains("name")), refused.toString());
    }

    /** The same sources give the same bytes. */
    @Test
    void nothingComesFromAClockOrByChance() throws IOException {
        JsonNode bill = Bill.json();
        assertFalse(bill.has("serialNumber"));
        assertFalse(bill.get("metadata").has("timestamp"));
    }

    @Test
    void isAboutTheProgram() throws IOException {
        JsonNode program = Bill.json().get("metadata").get("component");
        assertEquals("application", program.get("type").asText());
        assertTrue(Bill.parts().stream().anyMatch(Part::isOurs));
    }

    /** Tests' libraries are not the user's. */
    @Test
    void namesNoLibraryOfTests() throws IOException {
        Pattern tests = Pattern.compile("junit|jqwik|archunit|verapdf|selenium|networknt|cyclonedx|jmh|databind");
        for (Part part : Bill.parts()) {
            assertFalse(tests.matcher(part.group() + ":" + part.name()).find(), part.toString());
        }
    }
}
