package org.drillwright.print.command.watch.page;

import java.util.Locale;
import org.drillwright.model.Language;
import org.drillwright.print.diagram.Legend;
import org.drillwright.print.diagram.Sample;

/** What the signs in the pictures mean, for the page. */
final class KeyJson {

    private KeyJson() {}

    static String of(Locale language) {
        return Json.of(json -> Json.texts(
                "signs",
                Legend.in(new Language(language.getLanguage())).stream()
                        .map(Sample::words)
                        .toList(),
                json));
    }
}
