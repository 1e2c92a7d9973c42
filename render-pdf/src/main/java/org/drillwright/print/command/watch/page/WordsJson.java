package org.drillwright.print.command.watch.page;

import java.util.Locale;
import org.drillwright.model.School;
import org.drillwright.notation.Glossary;
import org.drillwright.notation.Tongue;
import org.drillwright.notation.Vocabulary;

/** The words that are understood, the school's own among them, for the page. */
final class WordsJson {

    private WordsJson() {}

    static String of(School school) {
        Vocabulary vocabulary = Vocabulary.standard().with(school.words());
        return Json.of(json -> {
            json.writeArrayFieldStart("terms");
            for (Glossary.Entry entry : Glossary.entries(vocabulary)) {
                json.writeStartObject();
                json.writeStringField("kind", entry.term().kind().name().toLowerCase(Locale.ROOT));
                json.writeStringField("term", entry.term().id());
                for (Tongue tongue : Tongue.values()) {
                    Json.texts(tongue.tag(), entry.in(tongue), json);
                }
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }
}
