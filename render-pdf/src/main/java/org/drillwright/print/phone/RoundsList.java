package org.drillwright.print.phone;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.pair.Round;
import org.drillwright.register.History;

/** The rounds for whoever teaches: a box to tick for each that was worked, what was otherwise, and what comes of it. */
final class RoundsList {

    static final String ID = "rounds";

    private final PhoneEvening evening;
    private final EveningPeople people;
    private final Voice voice;
    private final Html html = new Html();

    RoundsList(PhoneEvening evening) {
        this.evening = evening;
        this.people = evening.people();
        this.voice = evening.voice();
    }

    String write() {
        html.start("section", "id", ID, "class", "view", "aria-labelledby", "title-rounds");
        html.put("h2", voice.text(PhoneText.ALL_ROUNDS), "id", "title-rounds", "tabindex", "-1");
        html.start("ol", "class", "rows", "role", "list").line();
        evening.plan().rounds().forEach(this::row);
        html.end("ol").line();
        html.start("p", "class", "pair live");
        html.put("button", voice.text(PhoneText.ALL_WORKED), "type", "button", "id", "all")
                .end("p");
        otherwise();
        new RecordPart(PhoneText.TO_RECORD, PhoneText.RECORD_EVENING, Optional.of(PhoneText.UNSAID), 5)
                .write(html, voice);
        return html.end("section").line().toString();
    }

    private void row(Round round) {
        String number = String.valueOf(round.number());
        html.start("li").start("a", "href", "#" + RoundArticle.id(round.number()));
        html.put("b", voice.text(PhoneText.ROUND, number)).start("span");
        evening.drill(html, round);
        html.end("span").end("a").start("label", "class", "tick live");
        html.put("span", voice.text(PhoneText.WORKED_ROUND, number), "class", "heard");
        html.start("input", "type", "checkbox", "autocomplete", "off", "data-worked", number);
        html.end("label").end("li").line();
    }

    private void otherwise() {
        html.start("div", "class", "part live").put("h3", voice.text(PhoneText.CHANGES));
        html.put("p", voice.text(PhoneText.CHANGES_HOW));
        html.start("ul", "id", "changes", "role", "list").end("ul");
        html.put("label", voice.text(PhoneText.TOO), "for", "too").start("p", "class", "pair");
        html.start("input", "id", "too", "type", "text", "autocomplete", "off", "spellcheck", "false", "dir", "auto")
                .put("button", voice.text(PhoneText.ADD), "type", "button", "id", "add-too")
                .end("p")
                .end("div")
                .line();
    }

    /** What is asked when a name in a round is tapped. */
    String dialog() {
        Html asked = new Html();
        asked.start("dialog", "id", "change", "aria-labelledby", "change-title");
        asked.put("h2", "", "id", "change-title");
        asked.put("button", voice.text(PhoneText.GONE_NOW), "type", "button", "id", "gone");
        asked.put("button", voice.text(PhoneText.BACK_NOW), "type", "button", "id", "returned");
        asked.put("label", voice.text(PhoneText.STAND_IN), "for", "other").start("select", "id", "other");
        people.all().stream()
                .sorted(Comparator.comparing(person -> person.equals(History.INSTRUCTOR) ? 1 : 0))
                .forEach(person -> option(asked, person));
        asked.put("option", voice.text(PhoneText.SOMEBODY), "value", "").end("select");
        asked.start(
                "input",
                "id",
                "named",
                "type",
                "text",
                "autocomplete",
                "off",
                "spellcheck",
                "false",
                "dir",
                "auto",
                "placeholder",
                voice.text(PhoneText.NAME),
                "aria-label",
                voice.text(PhoneText.NAME),
                "hidden",
                "");
        asked.put("button", voice.text(PhoneText.STAND_IN_NOW), "type", "button", "id", "instead");
        asked.put("button", voice.text(PhoneText.CANCEL), "type", "button", "id", "shut");
        return asked.end("dialog").line().toString();
    }

    private void option(Html asked, String person) {
        String number = String.valueOf(people.number(person));
        List<String> word = people.word(person).stream().toList();
        if (word.isEmpty()) {
            asked.put("option", people.called(person), "value", number);
        } else {
            asked.put("option", people.called(person), "value", number, "data-word", word.get(0));
        }
    }
}
