package org.drillwright.print.command.watch.page;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.drillwright.report.DisplayWidth;
import org.drillwright.report.RunSummary;
import org.drillwright.source.Finding;
import org.drillwright.source.LineColumn;

/** Writes what several answers have in common. */
final class Json {

    private static final JsonFactory FACTORY = new JsonFactory();

    private Json() {}

    /** Something that writes itself. */
    @FunctionalInterface
    interface Writing {
        void write(JsonGenerator json) throws IOException;
    }

    static String of(Writing writing) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.writeStartObject();
            writing.write(json);
            json.writeEndObject();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
        return text.toString();
    }

    static void texts(String field, List<String> texts, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(field);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    /** How many findings there are of each kind. */
    static void tally(RunSummary tally, JsonGenerator json) throws IOException {
        json.writeNumberField("errors", tally.errors());
        json.writeNumberField("warnings", tally.warnings());
        json.writeNumberField("notes", tally.notes());
    }

    /** Names by names. */
    static void names(String field, Map<String, String> names, JsonGenerator json) throws IOException {
        json.writeObjectFieldStart(field);
        for (Map.Entry<String, String> one : names.entrySet()) {
            json.writeStringField(one.getKey(), one.getValue());
        }
        json.writeEndObject();
    }

    /** Findings, each with its place in code points and the line it begins in. */
    static void findings(String field, List<Finding> findings, Locale language, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(field);
        for (Finding finding : findings) {
            LineColumn start = finding.position();
            LineColumn end = finding.file().position(finding.span().end());
            json.writeStartObject();
            json.writeStringField("severity", finding.severity().word());
            json.writeStringField("rule", finding.rule());
            json.writeStringField("file", finding.file().name());
            json.writeNumberField("line", start.line());
            json.writeNumberField("column", start.column());
            json.writeNumberField("endLine", end.line());
            json.writeNumberField("endColumn", end.column());
            json.writeStringField(
                    "text",
                    DisplayWidth.shown(finding.file().slice(finding.file().line(start.line()))));
            json.writeStringField("what", finding.what().in(language));
            json.writeStringField("wayOut", finding.wayOut().in(language));
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
