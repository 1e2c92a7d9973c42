package org.drillwright.print.command.watch.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.drillwright.check.Coverage;
import org.drillwright.check.Subject;
import org.drillwright.explain.Account;
import org.drillwright.explain.Explanation;
import org.drillwright.model.Drill;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.wording.Message;

/** The phrase for the page: how it begins, count after count, how it ends. */
final class PhraseJson {

    private final Subject subject;
    private final Drill drill;
    private final Map<Integer, Coverage.Gap> gaps;
    private final JsonGenerator json;
    private final Locale language;

    PhraseJson(Subject subject, Coverage coverage, JsonGenerator json, Locale language) {
        this.language = language;
        this.subject = subject;
        this.drill = subject.drill();
        this.gaps = coverage.gaps().stream().collect(Collectors.toMap(Coverage.Gap::step, gap -> gap));
        this.json = json;
    }

    void write() throws IOException {
        Account account = Account.of(subject);
        json.writeArrayFieldStart("steps");
        begin("start");
        text("opening", drill.opening());
        text("start", drill.start());
        end(account.opening());
        for (int step = 0; step < account.counts().size(); step++) {
            count(step, account.counts().get(step));
        }
        begin("closing");
        text("closing", drill.closing());
        end(account.closing());
        json.writeEndArray();
    }

    private void begin(String kind) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", kind);
    }

    private void end(Account.Part part) throws IOException {
        moves(part);
        standing(part.standing());
        json.writeEndObject();
    }

    private void count(int number, Account.Part count) throws IOException {
        begin("count");
        json.writeNumberField("number", subject.count(number));
        if (number < drill.steps().size()) {
            words(drill.steps().get(number));
        }
        moves(count);
        if (gaps.containsKey(number)) {
            gap(gaps.get(number));
        }
        standing(count.standing());
        json.writeEndObject();
    }

    private void words(Step step) throws IOException {
        text("call", step.call());
        text("leader", step.leader().map(Turn::say).orElse(""));
        text("follower", step.follower().map(Turn::say).orElse(""));
        text("distance", step.distance());
        text("safety", step.safety());
        text("note", step.note());
    }

    private void moves(Account.Part part) throws IOException {
        json.writeArrayFieldStart("read");
        for (Account.Told move : part.moves()) {
            json.writeStartObject();
            json.writeStringField("by", move.by().word());
            json.writeStringField("words", move.read().in(language));
            json.writeStringField("fate", move.fate().orElse(Message.none()).in(language));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void gap(Coverage.Gap gap) throws IOException {
        json.writeStringField("unknown", Explanation.unknown(gap).in(language));
    }

    private void standing(Account.Standing standing) throws IOException {
        json.writeObjectFieldStart("standing");
        for (Map.Entry<Side, Message> fencer : standing.fencers().entrySet()) {
            text(fencer.getKey().word(), fencer.getValue().in(language));
        }
        if (subject.isPartnerDrill()) {
            text("between", standing.between().in(language));
        }
        json.writeEndObject();
        Json.texts(
                "doubts",
                standing.doubts().stream()
                        .map(doubt -> doubt.in(language))
                        .distinct()
                        .toList(),
                json);
    }

    private void text(String field, String text) throws IOException {
        if (!text.isEmpty()) {
            json.writeStringField(field, text);
        }
    }
}
