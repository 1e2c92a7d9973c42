package org.drillwright.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion.VersionFlag;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.drillwright.source.Finding;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.source.Span;
import org.drillwright.wording.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** SARIF 2.1.0 (OASIS standard, 27 March 2020); section numbers are those of the standard. */
class SarifReportTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final JsonSchema STANDARD = standard();

    private static final List<RuleHelp> RULES = List.of(new RuleHelp(
            "choice-left-open",
            Severity.ERROR,
            Message.plain("No choice."),
            Message.plain("Who chooses waits."),
            "a: b\n",
            "a: c\n"));

    private static JsonSchema standard() {
        try (InputStream in = SarifReportTest.class.getResourceAsStream("/sarif/sarif-schema-2.1.0.json")) {
            return JsonSchemaFactory.getInstance(VersionFlag.V7).getSchema(in);
        } catch (IOException problem) {
            throw new AssertionError(problem);
        }
    }

    private static JsonNode report(Finding... findings) throws IOException {
        Judged judged = new Judged(9, List.of(new Judged.Gap("a", List.of(2, 5), List.of())), List.of());
        String text =
                SarifReport.of(List.of(findings), RULES, judged, "1.2.3", "The folder of the school.", Locale.ENGLISH);
        JsonNode report = JSON.readTree(text);
        assertEquals(Set.of(), STANDARD.validate(report), text);
        return report;
    }

    private static Finding finding(SourceFile file, int from, int to) {
        return new Finding(
                "choice-left-open",
                Severity.ERROR,
                file,
                new Span(from, to),
                Message.plain("A choice."),
                Message.plain("Write two drills."));
    }

    @Test
    void the_standards_schema_refuses_what_is_wrong() throws IOException {
        assertFalse(STANDARD.validate(JSON.readTree("{\"version\": \"2.1.0\"}")).isEmpty());
        assertFalse(STANDARD.validate(JSON.readTree(report().toString().replace("unicodeCodePoints", "letters")))
                .isEmpty());
    }

    @Test
    void nothing_found_is_an_empty_list() throws IOException {
        JsonNode run = report().at("/runs/0");
        assertEquals(JSON.readTree("[]"), run.get("results"));
        assertEquals("unicodeCodePoints", run.get("columnKind").asText());
        assertEquals("Drillwright", run.at("/tool/driver/name").asText());
        assertEquals("1.2.3", run.at("/tool/driver/version").asText());
    }

    /**
     * Worked by hand. The second line is {@code leader: 🤺🤺 or é!}, the é written as e and a mark: 'leader: ' takes columns 1
     * to 8, the two fencers 9 and 10 (one code point each, 3.14.17, though two UTF-16 units and four bytes), the space 11, 'or'
     * 12 and 13, so that the column behind it is 14 (3.30.8); the space 14, e 15, its mark 16, '!' 17.
     */
    @Test
    void columns_are_counted_in_code_points() throws IOException {
        String text = "title: \ud83e\udd3a\r\nleader: \ud83e\udd3a\ud83e\udd3a or e\u0301!\rlast: x\n";
        SourceFile file = new SourceFile("a.yaml", text);
        int or = text.indexOf("or e");
        JsonNode results = report(
                        finding(file, or, or + 2),
                        finding(file, text.indexOf('!'), text.indexOf("last") + 4),
                        finding(file, 9, 9))
                .at("/runs/0/results");
        assertEquals(region(2, 12, 2, 14), place(results.at("/0/locations/0/physicalLocation/region")));
        assertEquals(region(2, 17, 3, 5), place(results.at("/1/locations/0/physicalLocation/region")));
        assertEquals(region(1, 9, 1, 9), place(results.at("/2/locations/0/physicalLocation/region")));
    }

    private static JsonNode region(int startLine, int startColumn, int endLine, int endColumn) {
        return JSON.createObjectNode()
                .put("startLine", startLine)
                .put("startColumn", startColumn)
                .put("endLine", endLine)
                .put("endColumn", endColumn);
    }

    private static JsonNode place(JsonNode region) {
        return ((ObjectNode) region).without("snippet");
    }

    /** What services that show findings beside code ask of each rule, beyond the schema. */
    @Test
    void a_rule_says_all_of_itself() throws IOException {
        JsonNode rule = report().at("/runs/0/tool/driver/rules/0");
        assertEquals("ChoiceLeftOpen", rule.get("name").asText());
        assertEquals("No choice.", rule.at("/shortDescription/text").asText());
        assertEquals(
                "No choice. Who chooses waits.",
                rule.at("/fullDescription/text").asText());
        assertEquals(
                "No choice.\n\nWhy: Who chooses waits.\n\nBreaks it:\n\na: b\n\nKeeps it:\n\na: c",
                rule.at("/help/text").asText());
        assertEquals(
                "No choice.\n\n**Why:** Who chooses waits.\n\n**Breaks it:**\n\n```yaml\na: b\n```\n\n**Keeps it:**\n\n"
                        + "```yaml\na: c\n```",
                rule.at("/help/markdown").asText());
        assertEquals("no-choice", rule.at("/deprecatedIds/0").asText());
    }

    /** The same line is the same finding wherever it moves; a second one like it in the file is another. */
    @Test
    void a_finding_is_known_again_by_the_words_of_its_line() throws IOException {
        SourceFile before = new SourceFile("a.yaml", "one: a or b\ntwo: x\none: a or b\n");
        SourceFile after = new SourceFile("a.yaml", "# new\n\n  one:  a or b\n");
        JsonNode results = report(finding(before, 5, 7), finding(before, 17, 18), finding(before, 26, 28))
                .at("/runs/0/results");
        String first =
                results.at("/0/partialFingerprints/primaryLocationLineHash").asText();
        assertTrue(first.matches("[0-9a-f]{16}:1"), first);
        assertEquals(
                first.replace(":1", ":2"),
                results.at("/2/partialFingerprints/primaryLocationLineHash").asText());
        assertFalse(first.equals(
                results.at("/1/partialFingerprints/primaryLocationLineHash").asText()));
        assertEquals(
                first,
                report(finding(after, 15, 17))
                        .at("/runs/0/results/0/partialFingerprints/primaryLocationLineHash")
                        .asText());
        assertEquals("no-choice", results.at("/0/properties/was").asText());
    }

    /** The three kinds of line end that a SourceFile knows are named (3.14.18). */
    @Test
    void line_ends_are_named() throws IOException {
        assertEquals(JSON.readTree("[\"\\r\\n\", \"\\n\", \"\\r\"]"), report().at("/runs/0/newlineSequences"));
    }

    /** RFC 3986, sections 2.1 and 2.3; é is C3 A9 in UTF-8. A relative name has the root for its base (3.4.4). */
    @ParameterizedTest
    @CsvSource({
        "set/a.yaml, set/a.yaml, true",
        "my set/\u00e9p\u00e9e.yaml, my%20set/%C3%A9p%C3%A9e.yaml, true",
        "a:b#1%.yaml, a%3Ab%231%25.yaml, true",
        "/tmp/a b.yaml, file:///tmp/a%20b.yaml, false",
        "C:/a b.yaml, file:///C:/a%20b.yaml, false"
    })
    void files_are_uris(String name, String uri, boolean relative) throws IOException {
        JsonNode place = report(finding(new SourceFile(name, "x"), 0, 1))
                .at("/runs/0/results/0/locations/0/physicalLocation/artifactLocation");
        assertEquals(uri, place.get("uri").asText());
        assertEquals(relative, place.has("uriBaseId"));
    }

    @Test
    void levels_rules_and_messages() throws IOException {
        SourceFile file = new SourceFile("a.yaml", "x");
        Finding warning = finding(file, 0, 1).withSeverity(Severity.WARNING);
        Finding strange =
                new Finding("strange", Severity.NOTE, file, Span.at(0), Message.plain("What."), Message.plain(""));
        JsonNode run = report(finding(file, 0, 1), warning, strange).at("/runs/0");
        assertEquals("error", run.at("/results/0/level").asText());
        assertEquals("warning", run.at("/results/1/level").asText());
        assertEquals("note", run.at("/results/2/level").asText());
        assertEquals(
                "A choice. Write two drills.", run.at("/results/0/message/text").asText());
        for (JsonNode result : run.get("results")) {
            JsonNode rule =
                    run.at("/tool/driver/rules").get(result.get("ruleIndex").asInt());
            assertEquals(rule.get("id"), result.get("ruleId"));
            assertTrue(rule.at("/help/text").asText().length() > 3);
        }
        assertEquals(
                "error",
                run.at("/tool/driver/rules/0/defaultConfiguration/level").asText());
    }

    @Test
    void says_what_was_judged() throws IOException {
        assertEquals(
                "9 counts: 7 judged, 2 not (a: 2, 5).",
                report().at("/runs/0/invocations/0/toolExecutionNotifications/0/message/text")
                        .asText());
    }
}
