package org.drillwright.print.phone;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.print.layout.words.Label;

/** The list of all cards, with a box to tick for each, and what comes of the ticks. */
final class CardList {

    static final String ID = "drills";

    private final List<PhoneDrill> drills;
    private final Voice voice;
    private final Html html = new Html();

    CardList(List<PhoneDrill> drills, Voice voice) {
        this.drills = drills;
        this.voice = voice;
    }

    String write() {
        html.start("section", "id", ID, "class", "view", "aria-labelledby", "title-drills");
        html.put("h2", voice.text(PhoneText.DRILLS), "id", "title-drills", "tabindex", "-1");
        html.put("p", voice.number(PhoneText.SIZE, drills.size()), "id", "found", "role", "status");
        html.start("ul", "class", "rows", "role", "list").line();
        html.start("li").start("a", "href", "#" + SafetyArticle.ID);
        html.put("b", voice.text(Label.SAFETY_TITLE)).end("a").end("li").line();
        for (int at = 0; at < drills.size(); at++) {
            row(drills.get(at), at + 1);
        }
        html.end("ul");
        new RecordPart(PhoneText.DONE, PhoneText.RECORD, Optional.empty(), 4).write(html, voice);
        return html.end("section").line().toString();
    }

    private void row(PhoneDrill drill, int number) {
        html.start("li", "data-row", Article.id(number));
        html.start("a", "href", "#" + Article.id(number)).start("b");
        voice.author(html, drill.title(), drill.titleTag());
        html.end("b").put("span", about(drill)).end("a");
        html.start("label", "class", "tick live");
        html.put("span", voice.text(PhoneText.DONE_DRILL, drill.title()), "class", "heard");
        html.start(
                "input",
                "type",
                "checkbox",
                "autocomplete",
                "off",
                "data-drill",
                drill.drill().id(),
                "data-word",
                ShellWord.of(drill.drill().id()));
        html.end("label").end("li").line();
    }

    private String about(PhoneDrill drill) {
        String level = drill.drill().level();
        String weapon = voice.labels().weapon(drill.drill().weapon());
        String counts = voice.number(PhoneText.COUNTS, drill.drill().steps().size());
        return (level.isEmpty() ? "" : level + "\u00A0· ") + weapon.toLowerCase(Locale.ROOT) + "\u00A0· " + counts;
    }
}
