package org.drillwright.print.command.watch.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.drillwright.check.Coverage;
import org.drillwright.check.Subject;
import org.drillwright.print.command.live.LiveDrill;
import org.drillwright.print.command.live.Snapshot;
import org.drillwright.report.DisplayWidth;
import org.drillwright.source.SourceFile;

/** A drill for the page: the author's lines, what was found in them, and the phrase. */
final class DrillJson {

    private DrillJson() {}

    static String of(Snapshot school, LiveDrill sheet, Locale language) {
        return Json.of(json -> {
            json.writeStringField("name", sheet.name());
            json.writeNumberField("revision", sheet.revision());
            json.writeBooleanField("readable", sheet.isReadable());
            json.writeBooleanField("stale", sheet.isStale());
            json.writeBooleanField("unsettled", sheet.isUnsettled());
            Json.tally(sheet.tally(), json);
            Json.findings("findings", sheet.findings(), language, json);
            Json.texts("lines", lines(sheet.text()), json);
            json.writeNumberField(
                    "cards", sheet.preview().map(cards -> cards.cards().size()).orElse(0));
            json.writeStringField("size", school.school().card().word());
            Json.texts(
                    "remarks",
                    sheet.preview().stream()
                            .flatMap(cards -> cards.remarks().stream())
                            .map(remark -> remark.in(language))
                            .toList(),
                    json);
            if (sheet.subject().isPresent()) {
                drill(sheet.subject().get(), language, json);
                reel(new PictureStrip(sheet.pictures()), json);
            } else {
                json.writeStringField("title", "");
            }
        });
    }

    /** Of how many pictures each step is, and how many there are between each of them and the next. */
    private static void reel(PictureStrip reel, JsonGenerator json) throws IOException {
        numbers("shots", reel.shots(), json);
        numbers("between", reel.between(), json);
    }

    private static void numbers(String name, List<Integer> numbers, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart(name);
        for (int number : numbers) {
            json.writeNumber(number);
        }
        json.writeEndArray();
    }

    /** Without the empty one behind the last line's end. */
    private static List<String> lines(String text) {
        SourceFile file = new SourceFile("", text);
        int last = file.line(file.lineCount()).length() == 0 ? file.lineCount() - 1 : file.lineCount();
        return IntStream.rangeClosed(1, last)
                .mapToObj(line -> DisplayWidth.shown(file.slice(file.line(line))))
                .toList();
    }

    private static void drill(Subject subject, Locale language, JsonGenerator json) throws IOException {
        Coverage coverage = subject.coverage();
        Duration tempo = subject.drill().tempo().orElse(subject.school().count());
        json.writeStringField("title", subject.drill().title());
        json.writeStringField("language", subject.school().language().locale().toLanguageTag());
        json.writeBooleanField("partner", subject.isPartnerDrill());
        json.writeNumberField("tempo", tempo.toMillis());
        json.writeBooleanField("ownTempo", subject.drill().tempo().isPresent());
        json.writeNumberField("counts", coverage.counts());
        json.writeNumberField("notJudged", coverage.gaps().size());
        new PhraseJson(subject, coverage, json, language).write();
    }
}
