package org.drillwright.print.diagram;

import java.util.HashMap;
import java.util.Map;
import org.drillwright.model.Language;

/** What is said of a drill's counts, none of it twice: what a count repeats is told by the count that it repeats. */
final class Once {

    private final Words words;
    private final Map<String, Integer> heard = new HashMap<>();

    Once(Language language) {
        this.words = Words.in(language);
    }

    /** @param count from 1, later than those before */
    String said(String sentence, int count) {
        Integer last = heard.put(sentence, count);
        return last == null ? sentence : words.text("again", last, sentence);
    }
}
