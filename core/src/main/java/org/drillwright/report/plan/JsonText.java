package org.drillwright.report.plan;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.drillwright.wording.Message;

/** Writes one object. */
final class JsonText {

    /** Rises when a field changes its meaning or goes. */
    static final int VERSION = 1;

    private static final JsonFactory FACTORY = new JsonFactory();

    private JsonText() {}

    /** Writes the fields of an object. */
    @FunctionalInterface
    interface Fields {
        void write(JsonGenerator json) throws IOException;
    }

    /** Writes one item of a list. */
    @FunctionalInterface
    interface Item<T> {
        void write(T item, JsonGenerator json) throws IOException;
    }

    static String of(Fields fields) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.useDefaultPrettyPrinter();
            json.writeStartObject();
            json.writeNumberField("version", VERSION);
            fields.write(json);
            json.writeEndObject();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
        return text + "\n";
    }

    static void texts(JsonGenerator json, String field, List<String> texts) throws IOException {
        list(json, field, texts, (text, out) -> out.writeString(text));
    }

    static void messages(JsonGenerator json, String field, List<Message> texts, Locale language) throws IOException {
        texts(json, field, texts.stream().map(text -> text.in(language)).toList());
    }

    static <T> void objects(JsonGenerator json, String field, List<T> items, Item<T> item) throws IOException {
        list(json, field, items, (one, out) -> {
            out.writeStartObject();
            item.write(one, out);
            out.writeEndObject();
        });
    }

    private static <T> void list(JsonGenerator json, String field, List<T> items, Item<T> item) throws IOException {
        json.writeArrayFieldStart(field);
        for (T one : items) {
            item.write(one, json);
        }
        json.writeEndArray();
    }
}
