package org.drillwright.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Programs read our JSON by its pages: a field that is written there and not here, or here and not there, misleads them. */
class JsonFieldsTest {

    private static final Path SOURCES = Path.of("src", "main", "java", "org", "drillwright");

    /** The first text in what writes a field: {@code writeStringField("date", …)}, {@code objects(json, "blocks", …)}. */
    private static final Pattern FIELD = Pattern.compile(
            "\\b(?:write\\w*Field\\w*\\(|(?:texts|messages|objects|state|fencer|text|day|people|taught)\\(\\s*(?:\\w+,\\s*)?)\\s*\"(\\w+)\"");

    /** What a page sets as code; a path such as {@code findings.rule} names each of its parts. */
    private static final Pattern CODE = Pattern.compile("`([^`\n]+)`");

    @ParameterizedTest(name = "{1}")
    @CsvSource({
        "report/JsonReport, formats.md",
        "explain/ExplanationJson, explained.md",
        "explain/SetWorkJson, coverage.md",
        "report/plan/PairsJson, plan-formats.md",
        "report/plan/LessonJson, plan-formats.md",
        "report/plan/HallJson, plan-formats.md",
        "report/plan/TermJson, plan-formats.md"
    })
    void every_field_is_on_the_page(String source, String page) throws IOException {
        Set<String> written = written(SOURCES.resolve(source + ".java"));
        assertFalse(
                written.isEmpty(), () -> "no field found in " + source + ": does it write them in another way now?");
        written.removeAll(named(page));
        assertEquals(Set.of(), written, () -> "fields of " + source + " that docs/" + page + " does not tell of");
    }

    /** Whatever writes JSON for others stands in the list above. */
    @ParameterizedTest
    @CsvSource({"report", "explain", "report/plan"})
    void every_writer_has_a_page(String room) throws IOException {
        List<String> known = List.of(
                "JsonReport", "ExplanationJson", "SetWorkJson", "PairsJson", "LessonJson", "HallJson", "TermJson");
        try (var files = Files.list(SOURCES.resolve(room))) {
            Set<String> writers = files.map(
                            file -> file.getFileName().toString().replace(".java", ""))
                    .filter(name -> name.endsWith("Json") || name.startsWith("Json"))
                    .filter(name -> !name.equals("JsonText"))
                    .collect(Collectors.toCollection(TreeSet::new));
            writers.removeAll(known);
            assertEquals(Set.of(), writers, "name the page of this JSON in the test above");
        }
    }

    private static Set<String> written(Path source) throws IOException {
        Set<String> fields = new TreeSet<>();
        Matcher field = FIELD.matcher(Files.readString(source));
        while (field.find()) {
            fields.add(field.group(1));
        }
        return fields;
    }

    private static Set<String> named(String page) throws IOException {
        Set<String> named = new TreeSet<>();
        Matcher code = CODE.matcher(Files.readString(Path.of("docs", page)));
        while (code.find()) {
            named.addAll(List.of(code.group(1).split("\\W+")));
        }
        return named;
    }
}
