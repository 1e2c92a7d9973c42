package org.drillwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;

class JsonReportTest {

    private static final SourceFile FILE = new SourceFile("set/a.yaml", "title: \ud83e\udd3a \"b\"\nlevel: x\n");

    private static final List<Finding> FINDINGS = List.of(
            new Finding(
                    "unknown-word",
                    Severity.ERROR,
                    FILE,
                    new Span(21, 22),
                    Message.plain("'x' is \"not\" known."),
                    Message.plain("Known: \u00e9.")),
            new Finding("a-rule", Severity.NOTE, FILE, new Span(10, 22), Message.plain("What."), Message.plain("")));

    private static final Judged JUDGED =
            new Judged(9, List.of(new Judged.Gap("a", List.of(2, 5), List.of("opening"))), List.of("b.yaml"));

    @Test
    void findings_and_tally_are_parsed_back() throws IOException {
        Object parsed = parse(JsonReport.of(FINDINGS, RunSummary.of(3, FINDINGS), JUDGED, Locale.ENGLISH));
        assertEquals(
                Map.of(
                        "version",
                        1,
                        "findings",
                        List.of(
                                finding("unknown-word", "error", 2, 8, 2, 9, "'x' is \"not\" known.", "Known: \u00e9."),
                                finding("a-rule", "note", 1, 10, 2, 9, "What.", "")),
                        "tally",
                        Map.of("drills", 3, "errors", 1, "warnings", 0, "notes", 1),
                        "judged",
                        Map.of(
                                "counts",
                                9,
                                "notJudged",
                                2,
                                "gaps",
                                List.of(Map.of("drill", "a", "counts", List.of(2, 5), "parts", List.of("opening"))),
                                "unread",
                                List.of("b.yaml"))),
                parsed);
    }

    private static Map<String, Object> finding(
            String rule,
            String severity,
            int line,
            int column,
            int endLine,
            int endColumn,
            String what,
            String wayOut) {
        Map<String, Object> finding = new LinkedHashMap<>();
        finding.put("rule", rule);
        if (rule.equals("unknown-word")) {
            finding.put("was", "known-word");
        }
        finding.put("severity", severity);
        finding.put("file", "set/a.yaml");
        finding.put("line", line);
        finding.put("column", column);
        finding.put("endLine", endLine);
        finding.put("endColumn", endColumn);
        finding.put("what", what);
        finding.put("wayOut", wayOut);
        return finding;
    }

    @Test
    void nothing_found_is_an_empty_list() throws IOException {
        assertEquals(
                Map.of(
                        "version",
                        1,
                        "findings",
                        List.of(),
                        "tally",
                        Map.of("drills", 2, "errors", 0, "warnings", 0, "notes", 0),
                        "judged",
                        Map.of("counts", 0, "notJudged", 0, "gaps", List.of(), "unread", List.of())),
                parse(JsonReport.of(
                        List.of(), RunSummary.of(2, List.of()), new Judged(0, List.of(), List.of()), Locale.ENGLISH)));
    }

    /** Each field has a row on the page of formats, and each row a field. */
    @Test
    void every_field_is_described() throws IOException {
        Set<String> written = new TreeSet<>();
        names(parse(JsonReport.of(FINDINGS, RunSummary.of(1, FINDINGS), JUDGED, Locale.ENGLISH)), "", written);
        Set<String> described = new TreeSet<>();
        String page = Files.readString(Path.of("docs", "formats.md"), StandardCharsets.UTF_8);
        page.lines()
                .filter(line -> line.startsWith("| `"))
                .forEach(line -> described.add(line.substring(3, line.indexOf('`', 3))));
        assertEquals(described, written);
        assertTrue(page.contains("version " + JsonReport.VERSION), "the page names the version");
    }

    private static void names(Object value, String path, Set<String> names) {
        if (value instanceof Map<?, ?> fields) {
            fields.forEach((name, inner) -> {
                names.add(path + name);
                names(inner, path + name + ".", names);
            });
        } else if (value instanceof List<?> items) {
            items.forEach(item -> names(item, path, names));
        }
    }

    private static Object parse(String text) throws IOException {
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            parser.nextToken();
            Object value = value(parser);
            assertEquals(null, parser.nextToken(), "one value and no more");
            return value;
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            Map<String, Object> fields = new LinkedHashMap<>();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String name = parser.currentName();
                parser.nextToken();
                fields.put(name, value(parser));
            }
            return fields;
        }
        if (token == JsonToken.START_ARRAY) {
            List<Object> items = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                items.add(value(parser));
            }
            return items;
        }
        return token == JsonToken.VALUE_NUMBER_INT ? (Object) parser.getIntValue() : parser.getText();
    }
}
