package org.drillwright.print.phone;

import java.util.List;
import org.drillwright.print.diagram.Legend;
import org.drillwright.print.diagram.Sample;
import org.drillwright.print.frame.Box;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.svg.Symbols;

/** The safety card: the conduct of the hall, and how to read the pictures. */
final class SafetyArticle {

    static final String ID = "safety";

    private static final List<Label> CONDUCT = List.of(
            Label.SAFETY_BEFORE,
            Label.SAFETY_SALUTE,
            Label.SAFETY_MASK,
            Label.SAFETY_SILENCE,
            Label.SAFETY_COUNT,
            Label.SAFETY_FORCE,
            Label.SAFETY_BLADE,
            Label.SAFETY_STOP);

    private static final double PICTURE = 80;

    private SafetyArticle() {}

    static String write(Voice voice, Symbols symbols) {
        Html html = new Html();
        html.start("article", "id", ID, "class", "view safety", "aria-labelledby", "title-safety");
        html.put("h2", voice.text(Label.SAFETY_TITLE), "id", "title-safety", "tabindex", "-1");
        html.start("p")
                .put("b", voice.text(Label.SAFETY_RISK) + " " + voice.text(Label.DEFERRAL))
                .end("p");
        html.start("ul", "role", "list").line();
        CONDUCT.forEach(rule -> html.put("li", voice.text(rule)).line());
        html.end("ul").put("h3", voice.text(Label.LEGEND_TITLE));
        html.start("ul", "class", "legend", "role", "list").line();
        for (Sample sample : Legend.in(voice.labels().language())) {
            Box box = new Box(0, 0, PICTURE, sample.height(PICTURE));
            html.start("li").markup(symbols.sign(box, sample.draw(0, 0, PICTURE), "sample"));
            html.put("span", sample.words()).end("li").line();
        }
        return html.end("ul").end("article").line().toString();
    }
}
