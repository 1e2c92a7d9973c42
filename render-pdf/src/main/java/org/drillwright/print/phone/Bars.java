package org.drillwright.print.phone;

import java.util.List;
import org.drillwright.print.layout.words.Label;

/** What stands at the foot, where the thumb is, one bar for each way of looking at the page; seen with the script only. */
final class Bars {

    private Bars() {}

    static String write(List<PhoneDrill> drills, Voice voice) {
        Html html = new Html();
        html.start("nav", "class", "bar live", "aria-label", voice.text(PhoneText.BAR))
                .line();
        html.start("div", "class", "on-safety");
        html.put("a", voice.text(PhoneText.ALL_DRILLS), "class", "main", "href", "#" + CardList.ID)
                .end("div")
                .line();
        search(html, drills, voice);
        html.start("div", "class", "on-card");
        html.put("a", voice.text(PhoneText.ALL_DRILLS), "href", "#" + CardList.ID);
        html.put("a", voice.text(PhoneText.BY_COUNT), "class", "main", "id", "by-count", "href", "#")
                .end("div")
                .line();
        html.start("div", "class", "on-play");
        html.put("button", voice.text(PhoneText.BACK), "type", "button", "id", "back");
        html.start("button", "type", "button", "id", "next", "class", "main");
        html.put("span", "", "id", "fill").put("span", "", "id", "next-word");
        return html.end("button").end("div").end("nav").line().toString();
    }

    private static void search(Html html, List<PhoneDrill> drills, Voice voice) {
        html.start("div", "class", "on-drills");
        html.start(
                "input",
                "type",
                "search",
                "id",
                "search",
                "autocomplete",
                "off",
                "spellcheck",
                "false",
                "placeholder",
                voice.text(PhoneText.SEARCH),
                "aria-label",
                voice.text(PhoneText.SEARCH));
        List<String> levels = drills.stream()
                .map(drill -> drill.drill().level())
                .filter(level -> !level.isEmpty())
                .distinct()
                .toList();
        if (levels.size() > 1) {
            html.start("select", "id", "level", "autocomplete", "off", "aria-label", voice.text(Label.LEVEL));
            html.put("option", voice.text(PhoneText.LEVELS), "value", "");
            levels.forEach(level -> html.put("option", voice.capitalised(level), "value", level));
            html.end("select");
        }
        html.end("div").line();
    }

    /** The counts as cells, and how to let them run; the script puts them into the card that is gone through. */
    static String cells(Voice voice) {
        Html html = new Html();
        html.start(
                "div",
                "id",
                "cells",
                "class",
                "live",
                "role",
                "group",
                "aria-label",
                voice.text(PhoneText.CELLS),
                "hidden",
                "");
        html.end("div")
                .start(
                        "p",
                        "id",
                        "running",
                        "class",
                        "live",
                        "dir",
                        voice.direction().word(),
                        "hidden",
                        "");
        html.put("button", "", "type", "button", "id", "run").put("span", "", "id", "time");
        html.end("p").put("p", "", "id", "said", "class", "heard", "role", "status");
        return html.line().toString();
    }
}
