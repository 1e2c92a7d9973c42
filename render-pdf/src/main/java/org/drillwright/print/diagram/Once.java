package org.drillwright.print.diagram;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.drillwright.model.Language;
import org.drillwright.wording.Message;

/** What is said of a drill's counts, none of it twice: what a count repeats is told by the count that it repeats. */
final class Once {

    private final Locale language;
    private final Map<String, Integer> heard = new HashMap<>();

    Once(Language language) {
        this.language = language.locale();
    }

    /** @param count from 1, later than those before */
    String said(String sentence, int count) {
        Integer last = heard.put(sentence, count);
        return last == null
                ? sentence
                : Message.of(Once.class, "again", last, sentence).in(language);
    }
}
