package org.drillwright.print.parts;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;

/** The bill of materials that the build has written. Maven writes it only when it is online. */
public final class Bill {

    public static final Path FILE = Path.of("target/drillwright.cdx.json");

    /** The fonts and their own licences, which no library's description tells of; written by hand. */
    public static final Path FONTS = Path.of("src/main/resources/META-INF/sbom/fonts.cdx.json");

    private Bill() {}

    static JsonNode json() throws IOException {
        assumeTrue(Files.exists(FILE), "Maven was offline and has not written " + FILE);
        return new ObjectMapper().readTree(FILE.toFile());
    }

    public static JsonNode fonts() throws IOException {
        return new ObjectMapper().readTree(FONTS.toFile());
    }

    public static List<Part> parts() throws IOException {
        return StreamSupport.stream(json().get("components").spliterator(), false)
                .map(part -> new Part(text(part, "group"), text(part, "name"), text(part, "version")))
                .toList();
    }

    private static String text(JsonNode part, String key) {
        return part.get(key).asText();
    }
}
