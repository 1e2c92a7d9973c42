package org.drillwright.print.command.watch.page;

import java.util.Locale;
import org.drillwright.model.Language;
import org.drillwright.model.School;
import org.drillwright.reading.Glossary;
import org.drillwright.reading.TurnReader;
import org.drillwright.terms.Terms;

/** The words the program understands, the school's own among them, for the page. */
final class WordsJson {

    private WordsJson() {}

    static String of(School school, Locale language) {
        TurnReader reader = TurnReader.standard().with(school.words());
        return Json.of(json -> {
            json.writeObjectFieldStart("languages");
            for (String tag : reader.tags()) {
                json.writeStringField(tag, Terms.of(new Language(tag)).in(language));
            }
            json.writeEndObject();
            json.writeArrayFieldStart("terms");
            for (Glossary.Item item : reader.glossary().items()) {
                json.writeStartObject();
                json.writeStringField("kind", item.term().kind().words().in(language));
                json.writeStringField("term", item.term().id());
                for (String tag : reader.tags()) {
                    Json.texts(tag, item.in(tag), json);
                }
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }
}
