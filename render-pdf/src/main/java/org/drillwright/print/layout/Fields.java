package org.drillwright.print.layout;

import java.util.ArrayList;
import java.util.List;
import org.drillwright.model.Drill;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.print.layout.words.CardSubject;

/** Every text of a drill that its card prints, front and back, with the name of its field. */
final class Fields {

    private Fields() {}

    record Field(String name, String text) {}

    static List<Field> of(CardSubject subject) {
        Drill drill = subject.drill();
        List<Field> fields = new ArrayList<>();
        fields.add(new Field("title", drill.title().isBlank() ? drill.id() : drill.title()));
        fields.add(new Field("level", drill.level()));
        subject.school().gearOf(drill).forEach(item -> fields.add(new Field("gear", item)));
        fields.add(new Field("opening", drill.opening()));
        fields.add(new Field("start", drill.start()));
        for (int at = 0; at < drill.steps().size(); at++) {
            step("step " + (at + 1) + ", ", drill.steps().get(at), fields);
        }
        fields.add(new Field("closing", drill.closing()));
        drill.cautions().forEach(caution -> fields.add(new Field("cautions", caution)));
        subject.footerRemarks().forEach(remark -> fields.add(new Field("remark", remark)));
        fields.add(new Field("school", subject.school().name()));
        subject.place().ifPresent(place -> fields.add(new Field("set", place.set())));
        fields.add(new Field("purpose", drill.purpose()));
        return fields;
    }

    private static void step(String in, Step step, List<Field> fields) {
        fields.add(new Field(in + "call", step.call()));
        for (Side side : Side.values()) {
            step.turn(side).ifPresent(turn -> fields.add(new Field(in + side.word(), turn.say())));
        }
        fields.add(new Field(in + "distance", step.distance()));
        fields.add(new Field(in + "safety", step.safety()));
    }
}
