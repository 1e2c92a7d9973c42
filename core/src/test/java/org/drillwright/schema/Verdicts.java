package org.drillwright.schema;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import com.networknt.schema.ValidationMessage;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.drillwright.model.School;
import org.drillwright.read.DrillReader;
import org.drillwright.read.Reading;
import org.drillwright.read.SchoolReader;
import org.drillwright.source.Severity;

/** One file put to the reader and to the schema. */
public final class Verdicts {

    static final ObjectMapper JSON = new ObjectMapper();
    static final YAMLMapper YAML = new YAMLMapper();

    private static final DrillReader READER = new DrillReader(School.DEFAULT);
    private static final JsonSchemaFactory FACTORY = JsonSchemaFactory.getInstance(VersionFlag.V202012);
    private static final JsonSchema DRILL = FACTORY.getSchema(
            org.drillwright.schema.JsonSchema.drill(School.DEFAULT, Map.of("a-drill", "A drill"), Locale.ENGLISH));
    private static final JsonSchema SCHOOL =
            FACTORY.getSchema(org.drillwright.schema.JsonSchema.school(Locale.ENGLISH));

    private Verdicts() {}

    static boolean readerTakesDrill(String text) {
        return readerTakes(READER.read("a-drill", "a-drill.yaml", text.getBytes(StandardCharsets.UTF_8)));
    }

    static boolean readerTakesSchool(String text) {
        return readerTakes(SchoolReader.read("school.yaml", text.getBytes(StandardCharsets.UTF_8)));
    }

    private static boolean readerTakes(Reading<?> reading) {
        boolean error = reading.findings().stream().anyMatch(finding -> finding.severity() == Severity.ERROR);
        if (error == reading.whole().isPresent()) {
            throw new AssertionError("neither read nor told");
        }
        return !error;
    }

    public static Set<ValidationMessage> schemaOfDrill(JsonNode drill) {
        return DRILL.validate(drill);
    }

    static Set<ValidationMessage> schemaOfSchool(JsonNode school) {
        return SCHOOL.validate(school);
    }

    /** As an editor sees a file. */
    public static JsonNode seen(String yaml) {
        try {
            return YAML.readTree(yaml);
        } catch (JsonProcessingException problem) {
            throw new AssertionError(yaml, problem);
        }
    }
}
