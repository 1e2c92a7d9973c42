package org.drillwright.print.bench.peers.work;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Puts each drill of a school to the schema: {@code SchemaCheck SCHEMA SCHOOL}; answers how many fit. */
public final class SchemaCheck {

    private final ObjectMapper yaml = new ObjectMapper(new YAMLFactory());
    private final JsonSchema schema;
    private final Path school;

    private SchemaCheck(JsonSchema schema, Path school) {
        this.schema = schema;
        this.school = school;
    }

    public static void main(String[] args) throws Exception {
        try (InputStream schema = Files.newInputStream(Path.of(args[0]))) {
            SchemaCheck check = new SchemaCheck(
                    JsonSchemaFactory.getInstance(VersionFlag.V202012).getSchema(schema), Path.of(args[1]));
            Work.of(check::fitting, List.of(args));
        }
    }

    private long fitting() throws IOException {
        try (Stream<Path> files = Files.walk(school)) {
            long fitting = 0;
            for (Path file : files.filter(SchemaCheck::isDrill).toList()) {
                JsonNode drill = yaml.readTree(Files.readAllBytes(file));
                fitting += schema.validate(drill).isEmpty() ? 1 : 0;
            }
            return fitting;
        }
    }

    private static boolean isDrill(Path file) {
        return file.toString().endsWith(".yaml") && !file.endsWith("school.yaml");
    }
}
