package org.drillwright.print.phone;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.register.History;

/** The rounds for whoever teaches: a box to tick for each that was worked, what was otherwise, and what comes of it. */
final class RoundsList {

    static final String ID = "rounds";

    private final KeptPlan plan;
    private final EveningPeople people;
    private final Function<String, EveningDrill> drills;
    private final Voice voice;
    private final Html html = new Html();

    RoundsList(KeptPlan plan, EveningPeople people, Function<String, EveningDrill> drills, Voice voice) {
        this.plan = plan;
        this.people = people;
        this.drills = drills;
        this.voice = voice;
    }

    String write() {
        html.start("section", "id", ID, "class", "view", "aria-labelledby", "title-rounds");
        html.put("h2", voice.text(Word.ALL_ROUNDS), "id", "title-rounds", "tabindex", "-1");
        html.start("ol", "class", "rows", "role", "list").line();
        plan.rounds().forEach(this::row);
        html.end("ol").line();
        html.start("p", "class", "pair live");
        html.put("button", voice.text(Word.ALL_WORKED), "type", "button", "id", "all")
                .end("p");
        otherwise();
        new RecordPart(Word.TO_RECORD, Word.RECORD_EVENING, Optional.of(Word.UNSAID), 5).write(html, voice);
        return html.end("section").line().toString();
    }

    private void row(Round round) {
        String number = String.valueOf(round.number());
        html.start("li").start("a", "href", "#" + RoundArticle.id(round.number()));
        html.put("b", voice.text(Word.ROUND, number)).start("span");
        EveningDrill drill = drills.apply(round.drill());
        voice.author(html, drill.title(), drill.tag());
        html.end("span").end("a").start("label", "class", "tick live");
        html.put("span", voice.text(Word.WORKED_ROUND, number), "class", "heard");
        html.start("input", "type", "checkbox", "autocomplete", "off", "data-worked", number);
        html.end("label").end("li").line();
    }

    private void otherwise() {
        html.start("div", "class", "part live").put("h3", voice.text(Word.CHANGES));
        html.put("p", voice.text(Word.CHANGES_HOW));
        html.start("ul", "id", "changes", "role", "list").end("ul");
        html.put("label", voice.text(Word.TOO), "for", "too").start("p", "class", "pair");
        html.start("input", "id", "too", "type", "text", "autocomplete", "off", "spellcheck", "false", "dir", "auto")
                .put("button", voice.text(Word.ADD), "type", "button", "id", "add-too")
                .end("p")
                .end("div")
                .line();
    }

    /** What is asked when a name in a round is tapped. */
    String dialog() {
        Html asked = new Html();
        asked.start("dialog", "id", "change", "aria-labelledby", "change-title");
        asked.put("h2", "", "id", "change-title");
        asked.put("button", voice.text(Word.GONE_NOW), "type", "button", "id", "gone");
        asked.put("button", voice.text(Word.BACK_NOW), "type", "button", "id", "returned");
        asked.put("label", voice.text(Word.STAND_IN), "for", "other").start("select", "id", "other");
        people.all().stream()
                .sorted(Comparator.comparing(person -> person.equals(History.INSTRUCTOR) ? 1 : 0))
                .forEach(person -> option(asked, person));
        asked.put("option", voice.text(Word.SOMEBODY), "value", "").end("select");
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
                voice.text(Word.NAME),
                "aria-label",
                voice.text(Word.NAME),
                "hidden",
                "");
        asked.put("button", voice.text(Word.STAND_IN_NOW), "type", "button", "id", "instead");
        asked.put("button", voice.text(Word.CANCEL), "type", "button", "id", "shut");
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
