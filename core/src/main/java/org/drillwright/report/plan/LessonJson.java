package org.drillwright.report.plan;

import java.util.List;
import java.util.Locale;
import org.drillwright.plan.evening.CardNeed;
import org.drillwright.plan.evening.ClassPlan;
import org.drillwright.plan.lesson.DrillLoad;
import org.drillwright.plan.lesson.LessonPlan;
import org.drillwright.plan.lesson.Remark;
import org.drillwright.wording.ConstantName;

/** A timed lesson for programs; times are whole seconds. */
public final class LessonJson {

    private LessonJson() {}

    public static String of(ClassPlan plan, List<CardNeed> cards, Locale language) {
        LessonPlan lesson = plan.lesson();
        return JsonText.of(json -> {
            json.writeStringField("date", plan.brief().date().toString());
            json.writeStringField("mode", plan.brief().mode().word());
            json.writeNumberField("people", plan.here().size());
            json.writeBooleanField("fits", lesson.fits());
            json.writeNumberField("length", lesson.length().toSeconds());
            json.writeNumberField("needed", lesson.needed().toSeconds());
            json.writeNumberField("practice", lesson.practice().toSeconds());
            JsonText.objects(json, "blocks", lesson.blocks(), (block, out) -> {
                out.writeStringField("kind", ConstantName.hyphened(block.kind()));
                out.writeStringField("name", block.name());
                out.writeNumberField("start", block.start().toSeconds());
                out.writeNumberField("end", block.end().toSeconds());
                out.writeStringField("how", block.how());
            });
            JsonText.objects(json, "drills", lesson.drills(), (load, out) -> {
                out.writeStringField("drill", load.drill());
                out.writeNumberField("rounds", load.rounds());
                out.writeNumberField("repetitions", load.repetitions());
                out.writeNumberField("roles", load.roles());
                out.writeNumberField("waves", load.waves());
            });
            JsonText.texts(
                    json,
                    "leftOut",
                    lesson.leftOut().stream().map(DrillLoad::drill).toList());
            JsonText.objects(json, "cards", cards, (need, out) -> {
                out.writeStringField("drill", need.drill());
                out.writeStringField("set", need.set());
                out.writeNumberField("number", need.number());
                out.writeNumberField("count", need.count());
            });
            JsonText.messages(json, "moved", Remark.sentences(lesson.moved()), language);
            JsonText.messages(json, "advice", Remark.sentences(lesson.advice()), language);
            JsonText.messages(json, "remarks", Remark.sentences(plan.remarks()), language);
        });
    }
}
