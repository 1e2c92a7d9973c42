package org.drillwright.print.command.watch.page;

import org.drillwright.model.School;
import org.drillwright.reading.Glossary;
import org.drillwright.reading.TurnReader;

/** The words the program understands, the school's own among them, for the page. */
final class WordsJson {

    private WordsJson() {}

    static String of(School school) {
        TurnReader reader = TurnReader.standard().with(school.words());
        return Json.of(json -> {
            json.writeArrayFieldStart("terms");
            for (Glossary.Item item : reader.glossary().items()) {
                json.writeStartObject();
                json.writeStringField("kind", item.term().kind().word());
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
