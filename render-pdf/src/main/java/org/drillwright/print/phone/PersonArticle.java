package org.drillwright.print.phone;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.pair.Walk;

/** One person's evening: with whom, where and on what, round by round. */
final class PersonArticle {

    private final PhoneEvening evening;
    private final EveningPeople people;
    private final Voice voice;
    private final Html html = new Html();

    PersonArticle(PhoneEvening evening) {
        this.evening = evening;
        this.people = evening.people();
        this.voice = evening.voice();
    }

    static String id(int number) {
        return "person-" + number;
    }

    /** @param rounds those to be told */
    String write(String person, List<Round> rounds) {
        String id = id(people.number(person));
        html.start("article", "id", id, "class", "view person", "aria-labelledby", "title-" + id);
        html.start("h2", "id", "title-" + id, "tabindex", "-1");
        html.put("bdi", people.called(person)).end("h2").line();
        evening.plan().walks().stream()
                .filter(walk -> !walk.line(person).isEmpty()
                        && !rounds.isEmpty()
                        && walk.to() >= rounds.get(0).number())
                .forEach(walk -> html.put("p", line(person, walk, rounds.get(0).number()), "class", "line"));
        String drill = "";
        for (Round round : rounds) {
            if (!round.drill().equals(drill)) {
                html.markup(drill.isEmpty() ? "" : "</ol>\n").start("h3");
                evening.drill(html, round);
                html.end("h3").start("ol", "class", "turns", "role", "list").line();
                drill = round.drill();
            }
            turn(person, round);
        }
        return html.markup(drill.isEmpty() ? "" : "</ol>").end("article").line().toString();
    }

    /** Line and post in the first round to come. */
    private String line(String person, Walk walk, int next) {
        int from = Math.max(walk.from(), next);
        String rounds = from == walk.to()
                ? voice.text(PhoneText.ROUND, from)
                : voice.text(PhoneText.ROUNDS, from + "–" + walk.to());
        return walk.stays().contains(person)
                ? voice.text(PhoneText.LINE_A, rounds, walk.post(person, from))
                : voice.text(PhoneText.LINE_B, rounds, walk.post(person, from), walk.length());
    }

    private void turn(String person, Round round) {
        html.start("li").start("p", "class", "number");
        html.put("span", voice.text(PhoneText.ROUND, ""), "class", "heard")
                .words(String.valueOf(round.number()))
                .end("p");
        html.start("div");
        Optional<Group> group = round.groups().stream()
                .filter(one -> one.everyone().contains(person))
                .findFirst();
        List<Integer> watched = round.groups().stream()
                .filter(one -> one.eyes().filter(person::equals).isPresent())
                .map(Group::place)
                .toList();
        group.ifPresent(one -> with(person, one, round.number()));
        if (!watched.isEmpty()) {
            html.start("p").put("b", voice.text(PhoneText.YOU_WATCH)).words(" ");
            html.words(place(round.number(), Spans.of(watched))).end("p");
        } else if (group.isEmpty()) {
            html.put("p", voice.text(PhoneText.AWAY));
        }
        html.end("div").end("li").line();
    }

    private void with(String person, Group group, int round) {
        List<String> others = new ArrayList<>(group.everyone());
        others.remove(person);
        html.start("p", "class", "with").start("b");
        for (int at = 0; at < others.size(); at++) {
            html.words(at == 0 ? "" : " + ").put("bdi", people.called(others.get(at)));
        }
        html.words(others.isEmpty() ? voice.text(PhoneText.ALONE) : "").end("b");
        if (group.place() > 0) {
            html.words(" ").put("span", place(round, String.valueOf(group.place())), "class", "place");
        }
        html.end("p");
        List<String> said =
                group.people().contains(person) ? new GroupSentences(people, voice).to(person, group) : List.of();
        if (!said.isEmpty()) {
            html.put("p", String.join(" ", said), "class", "said");
        }
    }

    private String place(int round, String numbers) {
        return voice.text(evening.place(round), numbers);
    }
}
