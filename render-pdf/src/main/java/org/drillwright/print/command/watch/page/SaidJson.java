package org.drillwright.print.command.watch.page;

import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.drillwright.wording.Bundle;

/** Everything that the page says by itself, by its keys. */
final class SaidJson {

    private SaidJson() {}

    static String of(Locale language) {
        Bundle words = Bundle.in(SaidJson.class, language);
        Map<String, String> said = new TreeMap<>();
        words.keys().forEach(key -> said.put(key, words.text(key)));
        return Json.of(json -> {
            for (Map.Entry<String, String> one : said.entrySet()) {
                json.writeStringField(one.getKey(), one.getValue());
            }
        });
    }
}
