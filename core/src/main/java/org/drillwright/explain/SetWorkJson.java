package org.drillwright.explain;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import org.drillwright.explain.SetWork.Item;
import org.drillwright.explain.SetWork.Theme;

/** What a set works, for programs. The form is described on the page of coverage. */
public final class SetWorkJson {

    public static final int VERSION = 1;

    private static final JsonFactory FACTORY = new JsonFactory();

    private SetWorkJson() {}

    /**
     * The whole document.
     *
     * @param set the set's name; empty for the whole school
     * @param drills the ids of the set's drills
     * @param language of the words; the keys are the same in all
     */
    public static String of(SetWork work, String set, List<String> drills, Locale language) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.useDefaultPrettyPrinter();
            json.writeStartObject();
            json.writeNumberField("version", VERSION);
            json.writeStringField("set", set);
            texts(json, "drills", drills);
            for (Theme theme : Theme.values()) {
                json.writeArrayFieldStart(theme.word());
                for (Item item : work.of(theme)) {
                    json.writeStartObject();
                    json.writeStringField("key", item.key());
                    json.writeStringField("words", item.words().in(language));
                    texts(json, "drills", item.drills());
                    json.writeEndObject();
                }
                json.writeEndArray();
            }
            json.writeNumberField("counts", work.counts());
            json.writeNumberField("notJudged", work.unjudged());
            json.writeEndObject();
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
        return text + "\n";
    }

    private static void texts(JsonGenerator json, String field, List<String> texts) throws IOException {
        json.writeArrayFieldStart(field);
        for (String one : texts) {
            json.writeString(one);
        }
        json.writeEndArray();
    }
}
