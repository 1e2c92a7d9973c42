package org.drillwright.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.source.Finding;
import org.drillwright.source.FormerRules;
import org.drillwright.source.LineColumn;

/**
 * Findings for programs. The form is described on the page of formats; {@link #VERSION} rises when a field changes its
 * meaning or goes.
 */
public final class JsonReport {

    public static final int VERSION = 1;

    private static final JsonFactory FACTORY = new JsonFactory();

    private JsonReport() {}

    public static String of(List<Finding> findings, RunSummary tally, Judged judged, Locale language) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.useDefaultPrettyPrinter();
            json.writeStartObject();
            json.writeNumberField("version", VERSION);
            json.writeArrayFieldStart("findings");
            for (Finding finding : findings) {
                write(finding, language, json);
            }
            json.writeEndArray();
            write(tally, json);
            write(judged, json);
            json.writeEndObject();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
        return text + "\n";
    }

    private static void write(Finding finding, Locale language, JsonGenerator json) throws IOException {
        LineColumn start = finding.position();
        LineColumn end = finding.file().position(finding.span().end());
        json.writeStartObject();
        json.writeStringField("rule", finding.rule());
        Optional<String> was = FormerRules.was(finding.rule());
        if (was.isPresent()) {
            json.writeStringField("was", was.get());
        }
        json.writeStringField("severity", finding.severity().word());
        json.writeStringField("file", finding.file().name());
        json.writeNumberField("line", start.line());
        json.writeNumberField("column", start.column());
        json.writeNumberField("endLine", end.line());
        json.writeNumberField("endColumn", end.column());
        json.writeStringField("what", finding.what().in(language));
        json.writeStringField("wayOut", finding.wayOut().in(language));
        json.writeEndObject();
    }

    private static void write(Judged judged, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("judged");
        json.writeNumberField("counts", judged.counts());
        json.writeNumberField("notJudged", judged.notJudged());
        json.writeArrayFieldStart("gaps");
        for (Judged.Gap gap : judged.gaps()) {
            json.writeStartObject();
            json.writeStringField("drill", gap.drill());
            json.writeArrayFieldStart("counts");
            for (int count : gap.counts()) {
                json.writeNumber(count);
            }
            json.writeEndArray();
            texts("parts", gap.parts(), json);
            json.writeEndObject();
        }
        json.writeEndArray();
        texts("unread", judged.unread(), json);
        json.writeEndObject();
    }

    private static void texts(String field, List<String> texts, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(field);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private static void write(RunSummary tally, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart("tally");
        json.writeNumberField("drills", tally.drills());
        json.writeNumberField("errors", tally.errors());
        json.writeNumberField("warnings", tally.warnings());
        json.writeNumberField("notes", tally.notes());
        json.writeEndObject();
    }
}
