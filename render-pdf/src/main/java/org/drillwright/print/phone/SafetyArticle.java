package org.drillwright.print.phone;

import java.util.List;
import org.drillwright.print.diagram.Legend;
import org.drillwright.print.diagram.Sample;
import org.drillwright.print.frame.Rectangle;
import org.drillwright.print.layout.words.Label;
import org.drillwright.print.svg.Symbols;

/** The safety card: the conduct of the hall, and how to read the pictures. */
final class SafetyArticle {

    static final String ID = "safety";

    /** Each rule of conduct: its word, and what it asks. */
    private record Rule(Label word, Label said) {}

    private static final List<Rule> CONDUCT = List.of(
            new Rule(Label.SAFETY_BEFORE, Label.SAFETY_BEFORE_SAID),
            new Rule(Label.SAFETY_MASKS, Label.SAFETY_MASKS_SAID),
            new Rule(Label.SAFETY_CALLS, Label.SAFETY_CALLS_SAID),
            new Rule(Label.SAFETY_COUNTS, Label.SAFETY_COUNTS_SAID),
            new Rule(Label.SAFETY_TOUCHES, Label.SAFETY_TOUCHES_SAID),
            new Rule(Label.SAFETY_BLADE, Label.SAFETY_BLADE_SAID),
            new Rule(Label.SAFETY_HALT, Label.SAFETY_HALT_SAID));

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
        for (Rule rule : CONDUCT) {
            html.start("li").put("b", voice.text(rule.word()) + ":");
            html.put("span", " " + voice.text(rule.said())).end("li").line();
        }
        html.end("ul").put("h3", voice.text(Label.LEGEND_TITLE));
        html.start("ul", "class", "legend", "role", "list").line();
        for (Sample sample : Legend.in(voice.labels().language())) {
            Rectangle box = new Rectangle(0, 0, PICTURE, sample.height(PICTURE));
            html.start("li").markup(symbols.sign(box, sample.draw(0, 0, PICTURE), "sample"));
            html.put("span", sample.words()).end("li").line();
        }
        return html.end("ul").end("article").line().toString();
    }
}
