package org.drillwright.print.phone;

import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.drillwright.model.School;
import org.drillwright.plan.kept.Kept;
import org.drillwright.plan.kept.KeptPlan;
import org.drillwright.plan.pair.Round;
import org.drillwright.plan.roster.Naming;
import org.drillwright.print.layout.words.Labels;

/**
 * A kept plan as one page: each person's rounds; and for whoever teaches the rounds one by one, with ticks from which a line
 * for {@code drillwright record} is made. Without its script it is read from top to bottom.
 */
public final class EveningPage {

    private static final String NAMES = "names";

    private final School school;
    private final KeptPlan plan;
    private final String mark;
    private final Voice voice;
    private final EveningPeople people;
    private final Function<String, EveningDrill> drills;
    private final PhonePage.Cut cut;

    /** @param drills what each drill is called, by its id */
    public EveningPage(
            School school, Kept kept, Naming names, Function<String, EveningDrill> drills, PhonePage.Cut cut) {
        this.school = school;
        this.plan = kept.plan();
        this.mark = kept.mark().shown();
        this.voice = new Voice(Labels.in(school.language()));
        this.people = new EveningPeople(plan, names, voice);
        this.drills = drills;
        this.cut = cut;
    }

    /** The same plan gives the same page. */
    public byte[] write() {
        String title = school.name().isBlank() ? day() : day() + " – " + school.name();
        return new OnePage(voice, title, "light dark", cut).write(body(), "evening", "");
    }

    private String day() {
        LocalDate date = plan.date();
        return voice.capitalised(date.getDayOfWeek().getDisplayName(TextStyle.FULL, voice.locale())) + " " + date;
    }

    private String body() {
        Html html = new Html();
        html.start("body", attributes()).line();
        html.start("header", "class", "top").put("h1", day());
        html.start("p");
        voice.author(html, school.name(), voice.tag());
        html.end("p").put("p", voice.text(PhoneText.PLAN, mark)).end("header").line();
        html.start("main").line();
        List<Round> toCome = plan.rounds().stream()
                .filter(round -> round.number() > plan.worked())
                .toList();
        List<String> all = people.in(toCome);
        names(html, all);
        PhoneEvening evening = new PhoneEvening(plan, people, drills, voice);
        all.forEach(person -> html.markup(new PersonArticle(evening).write(person, toCome)));
        RoundsList rounds = new RoundsList(evening);
        html.markup(rounds.write());
        plan.rounds().forEach(round -> html.markup(new RoundArticle(evening).write(round)));
        html.markup(rounds.dialog()).end("main").line();
        bars(html);
        return html.end("body").line().toString();
    }

    private String[] attributes() {
        List<String> attributes = new ArrayList<>(List.of(
                "data-kept",
                "drillwright evening " + mark,
                "data-taken-over",
                String.valueOf(plan.worked()),
                "data-line",
                RecordWords.beginning(plan, mark)));
        for (RecordWords part : RecordWords.values()) {
            attributes.add(part.attribute());
            attributes.add(part.form());
        }
        attributes.addAll(voice.attributes(
                PhoneText.ROUND,
                PhoneText.GONE,
                PhoneText.RETURNED,
                PhoneText.STOOD_IN,
                PhoneText.THERE_TOO,
                PhoneText.GONE_HERE,
                PhoneText.FOR_HERE,
                PhoneText.UNDO,
                PhoneText.UNDO_SAID,
                PhoneText.COPIED,
                PhoneText.COPY_YOURSELF,
                PhoneText.FORGETS));
        return attributes.toArray(String[]::new);
    }

    private void names(Html html, List<String> all) {
        html.start("section", "id", NAMES, "class", "view", "aria-labelledby", "title-names");
        html.put("h2", voice.text(PhoneText.WHO), "id", "title-names", "tabindex", "-1");
        html.start("ul", "class", "rows names", "role", "list").line();
        for (String person : all) {
            html.start("li").start("a", "href", "#" + PersonArticle.id(people.number(person)));
            html.start("b").put("bdi", people.called(person)).end("b").end("a").end("li");
        }
        html.end("ul").end("section").line();
    }

    /** What stands at the foot, where the thumb is. */
    private void bars(Html html) {
        html.start("nav", "class", "bar live", "aria-label", voice.text(PhoneText.BAR))
                .line();
        html.start("div", "class", "on-names");
        html.put("a", voice.text(PhoneText.ALL_ROUNDS), "href", "#" + RoundsList.ID)
                .end("div");
        html.start("div", "class", "on-person");
        html.put("a", voice.text(PhoneText.ALL_NAMES), "href", "#" + NAMES, "class", "forget");
        html.put("a", voice.text(PhoneText.ALL_ROUNDS), "href", "#" + RoundsList.ID)
                .end("div");
        html.start("div", "class", "on-rounds");
        html.put("a", voice.text(PhoneText.ALL_NAMES), "href", "#" + NAMES, "class", "forget");
        html.put("a", "", "href", "#", "id", "next-unworked", "class", "main").end("div");
        html.start("div", "class", "on-round");
        html.put("a", "", "href", "#", "id", "before");
        html.put("button", voice.text(PhoneText.WORKED), "type", "button", "id", "worked", "class", "main");
        html.put("a", "", "href", "#", "id", "after").end("div");
        html.end("nav").line();
    }
}
