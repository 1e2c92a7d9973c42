package org.drillwright.report.plan;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drillwright.plan.progress.PersonDrill;
import org.drillwright.plan.schedule.ClassRow;
import org.drillwright.plan.schedule.GroupPlan;
import org.drillwright.plan.schedule.Taught;
import org.drillwright.plan.schedule.TermPlan;
import org.drillwright.wording.Message;

/** A term for programs. */
public final class TermJson {

    private TermJson() {}

    /**
     * All of it.
     *
     * @param mark of the published plan that says the same; empty if there is none
     * @param revision how many plans of the term were published
     */
    public static String of(TermPlan plan, String mark, int revision, Locale language) {
        return JsonText.of(json -> {
            json.writeStringField("term", plan.named());
            json.writeStringField("mark", mark);
            json.writeNumberField("revision", revision);
            json.writeStringField("date", plan.today().toString());
            JsonText.objects(json, "groups", plan.groups(), (group, one) -> group(group, language, one));
            JsonText.messages(json, "remarks", plan.remarks(), language);
        });
    }

    private static void group(GroupPlan group, Locale language, JsonGenerator json) throws IOException {
        json.writeStringField("name", group.group().name());
        JsonText.texts(json, "people", group.group().people());
        JsonText.objects(json, "classes", group.classes(), (row, one) -> row(row, language, one));
        JsonText.objects(json, "fundamentals", group.fundamentals(), (one, out) -> {
            out.writeStringField("drill", one.drill());
            out.writeNumberField("every", one.every());
            day("last", one.last(), out);
            day("next", one.next(), out);
        });
        json.writeObjectFieldStart("exam");
        json.writeNumberField("short", group.missing());
        json.writeNumberField("bound", bound(group));
        json.writeStringField(
                "sentence",
                TermText.exam(group).stream()
                        .reduce(Message.none(), Message::then)
                        .in(language));
        JsonText.objects(
                json,
                "drills",
                group.shortOf().entrySet().stream()
                        .sorted(Map.Entry.comparingByKey())
                        .toList(),
                (one, out) -> {
                    out.writeStringField("drill", one.getKey());
                    out.writeNumberField("short", one.getValue());
                });
        json.writeEndObject();
        people("ready", group.ready(), json);
        JsonText.objects(json, "missed", group.catchUps(), (one, out) -> {
            out.writeStringField("drill", one.drill());
            JsonText.texts(out, "people", one.people());
            day("on", one.on(), out);
            day("needed", one.needed(), out);
        });
        JsonText.objects(json, "left", List.copyOf(group.left().entrySet()), (one, out) -> {
            out.writeStringField("drill", one.getKey());
            out.writeStringField("because", one.getValue().in(language));
        });
        JsonText.messages(json, "changed", group.changed(), language);
        json.writeStringField("verdict", group.verdict().in(language));
    }

    private static long bound(GroupPlan group) {
        return group.found().map(plan -> plan.bound().missing()).orElse(0L);
    }

    private static void row(ClassRow row, Locale language, JsonGenerator json) throws IOException {
        json.writeStringField("key", row.day().key());
        json.writeStringField("date", row.day().date().toString());
        json.writeNumberField("minutes", row.minutes());
        json.writeNumberField("used", row.used());
        json.writeNumberField("expected", Math.round(row.expected()));
        taught("new", row.asNew(), language, json);
        taught("again", row.again(), language, json);
        people("lacking", row.lacking(), json);
        json.writeBooleanField("fixed", row.over());
    }

    private static void taught(String field, List<Taught> drills, Locale language, JsonGenerator json)
            throws IOException {
        JsonText.objects(json, field, drills, (one, out) -> {
            out.writeStringField("drill", one.drill());
            out.writeNumberField("minutes", one.minutes());
            out.writeStringField("because", one.reason().because().in(language));
            out.writeNumberField("rung", one.reason().rung());
            day("due", one.reason().due(), out);
        });
    }

    private static void people(String field, List<PersonDrill> all, JsonGenerator json) throws IOException {
        JsonText.objects(json, field, all, (one, out) -> {
            out.writeStringField("person", one.person());
            out.writeStringField("drill", one.drill());
        });
    }

    /** An empty text where there is none. */
    private static void day(String field, Optional<LocalDate> day, JsonGenerator json) throws IOException {
        json.writeStringField(field, day.map(LocalDate::toString).orElse(""));
    }
}
