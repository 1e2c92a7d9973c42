package org.drillwright.report.plan;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import org.drillwright.mark.PlanMark;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.kept.PrintedState;
import org.drillwright.plan.lesson.Remark;
import org.drillwright.plan.pair.Group;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.pair.Shortage;
import org.drillwright.plan.pair.Verdict;
import org.drillwright.plan.pair.Walk;
import org.drillwright.plan.pair.WalkChoice;
import org.drillwright.plan.pair.Watch;
import org.drillwright.plan.roster.Naming;
import org.drillwright.wording.Message;

/** Rounds of partners for programs. */
public final class PairsJson {

    private PairsJson() {}

    /** @param choices ways to change over, with their prices */
    public static String of(
            ClassPlan plan,
            PairingPlan pairs,
            List<WalkChoice> choices,
            PrintedState standing,
            Naming names,
            Locale language) {
        return JsonText.of(json -> {
            json.writeStringField("date", plan.brief().date().toString());
            json.writeStringField("mode", plan.brief().mode().word());
            json.writeNumberField("people", plan.here().size());
            json.writeStringField("method", pairs.method().words().english());
            json.writeStringField("mark", standing.mark().map(PlanMark::shown).orElse(""));
            json.writeStringField("hangs", standing.hangs().map(PlanMark::shown).orElse(""));
            json.writeBooleanField(
                    "provedBest", pairs.verdict().filter(Verdict::isProvedBest).isPresent());
            json.writeStringField(
                    "verdict",
                    pairs.verdict()
                            .map(Verdict::sentence)
                            .orElse(Message.none())
                            .in(language));
            json.writeNumberField("played", pairs.firstPlanned());
            JsonText.objects(json, "rounds", pairs.rounds(), (round, out) -> {
                out.writeNumberField("number", round.number());
                out.writeStringField("drill", round.drill());
                JsonText.objects(out, "groups", round.groups(), (group, one) -> write(group, names, one));
                JsonText.texts(
                        out,
                        "toANewPlace",
                        pairs.movers(round.number()).stream().map(names::of).toList());
            });
            JsonText.messages(json, "walk", ChangeWords.of(pairs.changes()), language);
            JsonText.objects(json, "formings", pairs.walks(), (walk, one) -> write(walk, names, one));
            JsonText.objects(json, "choices", choices, (choice, one) -> write(choice, language, one));
            JsonText.objects(json, "shortages", pairs.shortages(), PairsJson::write);
            JsonText.objects(json, "byChoice", pairs.watched(), (watch, one) -> write(watch, names, language, one));
            JsonText.messages(json, "facts", pairs.facts(), language);
            JsonText.messages(json, "remarks", Remark.sentences(plan.remarks()), language);
            JsonText.messages(json, "sincePrinted", standing.remarks(), language);
        });
    }

    private static void write(Group group, Naming names, JsonGenerator json) throws IOException {
        json.writeStringField("kind", group.kind().word());
        json.writeNumberField("place", group.place());
        JsonText.texts(json, "people", group.people().stream().map(names::of).toList());
        if (group.people().size() > 1) {
            json.writeStringField("first", names.of(group.people().get(0)));
        }
        if (group.helper().isPresent()) {
            json.writeStringField("helper", names.of(group.helper().get()));
        }
        if (group.eyes().isPresent()) {
            json.writeStringField("eyes", names.of(group.eyes().get()));
        }
        if (group.middle().isPresent()) {
            json.writeStringField("middle", names.of(group.middle().get()));
        }
    }

    private static void write(Walk walk, Naming names, JsonGenerator json) throws IOException {
        json.writeNumberField("from", walk.from());
        json.writeNumberField("to", walk.to());
        JsonText.texts(json, "stays", walk.stays().stream().map(names::of).toList());
        JsonText.texts(json, "moves", walk.moves().stream().map(names::of).toList());
    }

    private static void write(WalkChoice choice, Locale language, JsonGenerator json) throws IOException {
        json.writeNumberField("formings", choice.formings());
        json.writeStringField("ask", choice.word());
        json.writeBooleanField("usual", choice.usual());
        json.writeNumberField("changeLine", choice.change().people());
        json.writeNumberField("meetAgain", choice.pairs());
        JsonText.texts(json, "read", choice.read());
        json.writeStringField(
                "sentence",
                Message.clauses(List.of(choice.effort(), choice.price())).in(language));
    }

    private static void write(Watch watch, Naming names, Locale language, JsonGenerator json) throws IOException {
        json.writeStringField("drill", watch.drill());
        json.writeNumberField("new", watch.fresh());
        json.writeNumberField("knowing", watch.knowing());
        json.writeStringField("sentence", watch.sentence().in(language));
        JsonText.objects(json, "eyes", List.copyOf(new TreeMap<>(watch.posts()).entrySet()), (posts, one) -> {
            one.writeStringField("helper", names.of(posts.getKey()));
            one.writeNumberField("posts", posts.getValue());
        });
    }

    private static void write(Shortage shortage, JsonGenerator json) throws IOException {
        json.writeStringField("drill", shortage.drill());
        json.writeNumberField("new", shortage.fresh());
        json.writeNumberField("knowing", shortage.knowing());
        json.writeNumberField("pairs", shortage.pairs());
        json.writeNumberField("left", shortage.left());
        json.writeNumberField("helped", shortage.helped());
        json.writeBooleanField("onlyOdd", shortage.parity());
    }
}
