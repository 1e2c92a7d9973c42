package org.drillwright.print.command.watch.page;

import org.drillwright.model.Language;
import org.drillwright.print.diagram.Legend;
import org.drillwright.print.diagram.Sample;

/** What the signs in the pictures mean, for the page. */
final class KeyJson {

    private KeyJson() {}

    static String of(Language language) {
        return Json.of(json -> Json.texts(
                "signs", Legend.in(language).stream().map(Sample::words).toList(), json));
    }
}
