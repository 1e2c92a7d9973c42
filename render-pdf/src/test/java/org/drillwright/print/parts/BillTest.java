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
    void fits_the_schema_of_cyclone_dx() throws IOException {
        assertEquals(Set.of(), SCHEMA.validate(Bill.json()));
    }

    @Test
    void the_bill_of_fonts_fits_it_too() throws IOException {
        assertEquals(Set.of(), SCHEMA.validate(Bill.fonts()));
    }

    @Test
    void the_schema_refuses_a_part_without_a_name() throws IOException {
        JsonNode bill = Bill.json();
        ((ObjectNode) bill.get("components").get(0)).remove("name");
        Set<ValidationMessage> refused = SCHEMA.validate(bill);
        assertTrue(refused.stream().anyMatch(one -> one.getMessage().contains("name")), refused.toString());
    }

    /** The same sources give the same bytes. */
    @Test
    void nothing_comes_from_a_clock_or_by_chance() throws IOException {
        JsonNode bill = Bill.json();
        assertFalse(bill.has("serialNumber"));
        assertFalse(bill.get("metadata").has("timestamp"));
    }

    @Test
    void is_about_the_program() throws IOException {
        JsonNode program = Bill.json().get("metadata").get("component");
        assertEquals("application", program.get("type").asText());
        assertTrue(Bill.parts().stream().anyMatch(Part::isOurs));
    }

    /** Tests' libraries are not the user's. */
    @Test
    void names_no_library_of_tests() throws IOException {
        Pattern tests = Pattern.compile("junit|jqwik|archunit|verapdf|selenium|networknt|cyclonedx|jmh|databind");
        for (Part part : Bill.parts()) {
            assertFalse(tests.matcher(part.group() + ":" + part.name()).find(), part.toString());
        }
    }
}
