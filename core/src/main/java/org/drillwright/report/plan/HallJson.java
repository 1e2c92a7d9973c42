package org.drillwright.report.plan;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.drillwright.plan.hall.Floor;
import org.drillwright.plan.hall.LaneLayout;
import org.drillwright.plan.pair.PairingPlan;
import org.drillwright.plan.roster.Hall;

/** Lanes of a hall for programs; lengths are whole centimetres. */
public final class HallJson {

    private HallJson() {}

    public static String of(Floor floor, PairingPlan pairs, Locale language) {
        LaneLayout layout = floor.layout();
        return JsonText.of(json -> {
            json.writeObjectFieldStart("hall");
            hall(layout.hall(), json);
            json.writeEndObject();
            JsonText.objects(json, "blocks", layout.blocks(), (block, out) -> {
                out.writeBooleanField("lengthwise", block.lengthwise());
                out.writeNumberField("abreast", block.abreast());
                out.writeNumberField("rows", block.rows());
            });
            json.writeNumberField("waves", floor.waves());
            List<Integer> numbers =
                    IntStream.range(0, floor.lanes().size()).boxed().toList();
            JsonText.objects(json, "lanes", numbers, (at, out) -> {
                LaneLayout.Lane lane = floor.lanes().get(at);
                out.writeNumberField("x", lane.x());
                out.writeNumberField("y", lane.y());
                out.writeNumberField("length", lane.length());
                out.writeNumberField("width", lane.width());
                out.writeArrayFieldStart("places");
                for (int place : at < floor.places().size() ? floor.places().get(at) : List.<Integer>of()) {
                    out.writeNumber(place);
                }
                out.writeEndArray();
            });
            json.writeStringField("sentence", layout.sentence().in(language));
            JsonText.messages(json, "toKnow", HallText.toKnow(floor, pairs), language);
        });
    }

    private static void hall(Hall hall, JsonGenerator json) throws IOException {
        json.writeNumberField("length", hall.length());
        json.writeNumberField("width", hall.width());
        json.writeNumberField("laneLength", hall.laneLength());
        json.writeNumberField("laneWidth", hall.laneWidth());
        json.writeNumberField("sideGap", hall.sideGap());
        json.writeNumberField("endGap", hall.endGap());
        json.writeNumberField("sideMargin", hall.sideMargin());
        json.writeNumberField("endMargin", hall.endMargin());
    }
}
