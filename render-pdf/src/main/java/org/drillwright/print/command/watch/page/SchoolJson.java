package org.drillwright.print.command.watch.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import org.drillwright.model.Drill;
import org.drillwright.model.Level;
import org.drillwright.print.command.live.LiveDrill;
import org.drillwright.print.command.live.SchoolUpdate;
import org.drillwright.print.command.live.Snapshot;
import org.drillwright.report.RunSummary;
import org.drillwright.wording.Message;

/** The school and the list of its drills, for the page. */
final class SchoolJson {

    private SchoolJson() {}

    static String of(Snapshot school, Locale language) {
        return Json.of(json -> {
            json.writeNumberField("version", school.version());
            json.writeStringField("name", school.school().name());
            json.writeStringField("folder", school.place());
            json.writeStringField(
                    "trouble", school.trouble().orElse(Message.none()).in(language));
            json.writeBooleanField("judged", !school.isUnjudged());
            json.writeStringField("tally", school.tally().sentence().in(language));
            Json.findings("findings", school.folderFindings(), language, json);
            Json.names("renamed", school.renamed(), json);
            Json.texts(
                    "levels", school.school().levels().stream().map(Level::name).toList(), json);
            json.writeArrayFieldStart("drills");
            for (LiveDrill sheet : school.sheets()) {
                drill(sheet, json);
            }
            json.writeEndArray();
        });
    }

    private static void drill(LiveDrill sheet, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", sheet.name());
        json.writeStringField(
                "title",
                sheet.subject().map(one -> one.drill()).map(Drill::title).orElse(""));
        json.writeStringField(
                "level",
                sheet.subject().map(one -> one.drill()).map(Drill::level).orElse(""));
        json.writeBooleanField("readable", sheet.isReadable());
        json.writeBooleanField("unsettled", sheet.isUnsettled());
        Json.tally(RunSummary.of(1, sheet.judged()), json);
        json.writeEndObject();
    }

    /** One line. */
    static String of(SchoolUpdate change) {
        return Json.of(json -> {
            json.writeNumberField("version", change.version());
            Json.texts("saved", change.saved(), json);
            Json.texts("changed", change.changed(), json);
            Json.texts("gone", change.gone(), json);
            Json.names("renamed", change.renamed(), json);
        });
    }
}
