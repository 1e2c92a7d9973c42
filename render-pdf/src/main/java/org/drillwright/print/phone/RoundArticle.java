package org.drillwright.print.phone;

import java.util.List;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Round;

/** One round for whoever teaches: who works where. Each name can be tapped, to say that somebody was gone. */
final class RoundArticle {

    private static final String LEADS = "\u25CF";

    private final PhoneEvening evening;
    private final EveningPeople people;
    private final Voice voice;
    private final Html html = new Html();

    RoundArticle(PhoneEvening evening) {
        this.evening = evening;
        this.people = evening.people();
        this.voice = evening.voice();
    }

    static String id(int round) {
        return "round-" + round;
    }

    String write(Round round) {
        String id = id(round.number());
        html.start("article", "id", id, "class", "view round", "aria-labelledby", "title-" + id);
        html.start("p", "class", "up")
                .put("a", voice.text(PhoneText.ALL_ROUNDS), "href", "#" + RoundsList.ID)
                .end("p");
        html.put("h2", voice.text(PhoneText.ROUND, round.number()), "id", "title-" + id, "tabindex", "-1");
        html.start("p", "class", "drill").start("b");
        evening.drill(html, round);
        html.end("b").end("p");
        html.put("p", LEADS + " " + voice.text(PhoneText.LEADS_FIRST), "class", "key");
        html.start("ul", "class", "groups", "role", "list").line();
        round.groups().forEach(group -> group(group, round.number()));
        return html.end("ul").end("article").line().toString();
    }

    private void group(Group group, int round) {
        html.start("li").start("p", "class", "number");
        if (group.place() > 0) {
            html.put("span", voice.text(evening.place(round), ""), "class", "heard");
            html.words(String.valueOf(group.place()));
        } else {
            html.words("–");
        }
        html.end("p").start("div").start("div", "class", "people");
        group.people().forEach(person -> person(person, group, round));
        group.helper().ifPresent(helper -> person(helper, group, round));
        html.end("div");
        List<String> said = group.everyone().size() == 1
                ? List.of(voice.text(PhoneText.ALONE))
                : new GroupSentences(people, voice).of(group);
        if (!said.isEmpty()) {
            html.put("p", String.join(" ", said), "class", "said");
        }
        html.end("div").end("li").line();
    }

    private void person(String person, Group group, int round) {
        html.start(
                "button",
                "type",
                "button",
                "class",
                "who",
                "disabled",
                "",
                "data-who",
                String.valueOf(people.number(person)),
                "data-round",
                String.valueOf(round));
        boolean leads = group.people().size() > 1 && group.people().get(0).equals(person);
        html.words(leads ? LEADS + " " : "").put("bdi", people.called(person));
        html.put("span", "", "class", "otherwise").end("button");
    }
}
