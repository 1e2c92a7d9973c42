package org.drillwright.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.source.Finding;
import org.drillwright.source.Fingerprint;
import org.drillwright.source.FormerRules;
import org.drillwright.source.LineColumn;
import org.drillwright.source.Severity;
import org.drillwright.source.SourceFile;
import org.drillwright.wording.Message;

/** Findings in the Static Analysis Results Interchange Format (SARIF 2.1.0, OASIS 2020), which code hosts show. */
public final class SarifReport {

    private static final String SCHEMA =
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    /** What relative addresses of files begin from; who reads the report knows where it lies. */
    private static final String ROOT = "%SRCROOT%";

    /** Figures of a line's fingerprint, to the base of 16. */
    private static final int FIGURES = 16;

    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonGenerator json;
    private final List<RuleHelp> rules;
    private final Locale language;
    private final List<String> ids;
    private final Map<String, Integer> alike = new HashMap<>();

    private SarifReport(JsonGenerator json, List<RuleHelp> rules, Locale language) {
        this.language = language;
        this.json = json;
        this.rules = rules;
        this.ids = rules.stream().map(RuleHelp::id).toList();
    }

    /**
     * A report of one run.
     *
     * @param findings in files whose names are relative to the root, or absolute
     * @param rules all that could have found something
     * @param version the program's own
     * @param root one sentence: which folder the names of the files are relative to
     * @param language that people read it in; ids and keys are the same in all
     */
    public static String of(
            List<Finding> findings, List<RuleHelp> rules, Judged judged, String version, String root, Locale language) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.useDefaultPrettyPrinter();
            new SarifReport(json, complete(rules, findings), language).log(findings, judged, version, root);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
        return text + "\n";
    }

    /** Rules that are found by but not told of are listed by their ids. */
    private static List<RuleHelp> complete(List<RuleHelp> rules, List<Finding> findings) {
        List<RuleHelp> all = new ArrayList<>(rules);
        List<String> told = rules.stream().map(RuleHelp::id).toList();
        TreeSet<String> found = new TreeSet<>();
        findings.forEach(finding -> found.add(finding.rule()));
        found.removeAll(told);
        found.forEach(id -> all.add(new RuleHelp(id, Severity.ERROR, Message.plain(id), Message.none())));
        return all;
    }

    private void log(List<Finding> findings, Judged judged, String version, String root) throws IOException {
        json.writeStartObject();
        json.writeStringField("$schema", SCHEMA);
        json.writeStringField("version", "2.1.0");
        json.writeArrayFieldStart("runs");
        json.writeStartObject();
        tool(version);
        invocation(judged);
        json.writeStringField("columnKind", "unicodeCodePoints");
        json.writeArrayFieldStart("newlineSequences");
        for (String end : List.of("\r\n", "\n", "\r")) {
            json.writeString(end);
        }
        json.writeEndArray();
        json.writeObjectFieldStart("originalUriBaseIds");
        json.writeObjectFieldStart(ROOT);
        message("description", root);
        json.writeEndObject();
        json.writeEndObject();
        json.writeArrayFieldStart("results");
        for (Finding finding : findings) {
            result(finding);
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
    }

    private void tool(String version) throws IOException {
        json.writeObjectFieldStart("tool");
        json.writeObjectFieldStart("driver");
        json.writeStringField("name", "Drillwright");
        json.writeStringField("version", version);
        json.writeStringField("language", language.getLanguage());
        json.writeArrayFieldStart("rules");
        for (RuleHelp rule : rules) {
            rule(rule);
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndObject();
    }

    private void rule(RuleHelp rule) throws IOException {
        json.writeStartObject();
        json.writeStringField("id", rule.id());
        Optional<String> was = FormerRules.was(rule.id());
        if (was.isPresent()) {
            json.writeArrayFieldStart("deprecatedIds");
            json.writeString(was.get());
            json.writeEndArray();
        }
        if (rule.id().contains("-")) {
            json.writeStringField("name", name(rule.id()));
        }
        message("shortDescription", rule.asks().in(language));
        message("fullDescription", rule.asks().then(rule.why()).in(language));
        json.writeObjectFieldStart("help");
        json.writeStringField("text", rule.text(language));
        json.writeStringField("markdown", rule.markdown(language));
        json.writeEndObject();
        json.writeObjectFieldStart("defaultConfiguration");
        json.writeStringField("level", rule.severity().word());
        json.writeEndObject();
        json.writeEndObject();
    }

    /** The id as one word, as readers of reports want it ({@code TurnMissing}). */
    private static String name(String id) {
        return Stream.of(id.split("-"))
                .map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))
                .collect(Collectors.joining());
    }

    /** Silence is not approval: what was judged is said in the report, too. */
    private void invocation(Judged judged) throws IOException {
        json.writeArrayFieldStart("invocations");
        json.writeStartObject();
        json.writeBooleanField("executionSuccessful", true);
        json.writeArrayFieldStart("toolExecutionNotifications");
        json.writeStartObject();
        json.writeStringField("level", "note");
        message("message", judged.sentence().in(language) + ".");
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndArray();
    }

    private void result(Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("ruleId", finding.rule());
        json.writeNumberField("ruleIndex", ids.indexOf(finding.rule()));
        json.writeStringField("level", finding.severity().word());
        message("message", finding.words().in(language));
        json.writeArrayFieldStart("locations");
        json.writeStartObject();
        json.writeObjectFieldStart("physicalLocation");
        place(finding);
        json.writeEndObject();
        json.writeEndObject();
        json.writeEndArray();
        json.writeObjectFieldStart("partialFingerprints");
        json.writeStringField("primaryLocationLineHash", fingerprint(finding));
        json.writeEndObject();
        Optional<String> was = FormerRules.was(finding.rule());
        if (was.isPresent()) {
            json.writeObjectFieldStart("properties");
            json.writeStringField("was", was.get());
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    /** The same as long as the line's words stay, wherever they move; the number tells lines of a file apart that are alike. */
    private String fingerprint(Finding finding) {
        SourceFile file = finding.file();
        String words = file.slice(file.line(finding.position().line())).replaceAll("\\s+", "");
        String figures = Fingerprint.figures(words.getBytes(StandardCharsets.UTF_8), FIGURES);
        return figures + ":" + alike.merge(file.name() + "/" + finding.rule() + "/" + figures, 1, Integer::sum);
    }

    private void place(Finding finding) throws IOException {
        FileAddress address = FileAddress.of(finding.file().name());
        json.writeObjectFieldStart("artifactLocation");
        json.writeStringField("uri", address.uri());
        if (address.isRelative()) {
            json.writeStringField("uriBaseId", ROOT);
        }
        json.writeEndObject();
        LineColumn start = finding.position();
        LineColumn end = finding.file().position(finding.span().end());
        json.writeObjectFieldStart("region");
        json.writeNumberField("startLine", start.line());
        json.writeNumberField("startColumn", start.column());
        json.writeNumberField("endLine", end.line());
        json.writeNumberField("endColumn", end.column());
        if (finding.span().length() > 0) {
            message("snippet", finding.file().slice(finding.span()));
        }
        json.writeEndObject();
    }

    private void message(String key, String text) throws IOException {
        json.writeObjectFieldStart(key);
        json.writeStringField("text", text);
        json.writeEndObject();
    }
}
