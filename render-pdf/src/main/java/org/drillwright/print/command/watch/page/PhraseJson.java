package org.drillwright.print.command.watch.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.drillwright.check.Coverage;
import org.drillwright.check.Subject;
import org.drillwright.explain.EndWords;
import org.drillwright.explain.Explanation;
import org.drillwright.explain.StateWords;
import org.drillwright.model.Drill;
import org.drillwright.model.Side;
import org.drillwright.model.Step;
import org.drillwright.model.Turn;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.State;
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
        json.writeArrayFieldStart("steps");
        begin("start");
        text("opening", drill.opening());
        text("start", drill.start());
        end(subject.replay().opening(), subject.replay().start());
        for (int step = 0; step < subject.replay().counts().size(); step++) {
            count(step);
        }
        begin("closing");
        text("closing", drill.closing());
        end(subject.replay().closing(), subject.replay().closed());
        json.writeEndArray();
    }

    private void begin(String kind) throws IOException {
        json.writeStartObject();
        json.writeStringField("kind", kind);
    }

    private void end(List<Played> moves, State state) throws IOException {
        json.writeArrayFieldStart("read");
        for (Played played : moves) {
            read(played, Message.none());
        }
        json.writeEndArray();
        standing(state);
        json.writeEndObject();
    }

    private void count(int number) throws IOException {
        Count count = subject.replay().counts().get(number);
        begin("count");
        json.writeNumberField("number", subject.count(number));
        if (number < drill.steps().size()) {
            words(drill.steps().get(number));
        }
        json.writeArrayFieldStart("read");
        for (int at = 0; at < count.moves().size(); at++) {
            read(
                    count.moves().get(at),
                    AttackEnd.of(count, at).map(EndWords::of).orElse(Message.none()));
        }
        json.writeEndArray();
        if (gaps.containsKey(number)) {
            gap(gaps.get(number));
        }
        standing(count.end());
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

    private void read(Played played, Message fate) throws IOException {
        json.writeStartObject();
        json.writeStringField("by", played.move().by().word());
        json.writeStringField("words", Explanation.words(played, subject).in(language));
        json.writeStringField("fate", fate.in(language));
        json.writeEndObject();
    }

    private void gap(Coverage.Gap gap) throws IOException {
        json.writeStringField("unknown", Explanation.unknown(gap).in(language));
    }

    private void standing(State state) throws IOException {
        json.writeObjectFieldStart("standing");
        for (Side side : Side.values()) {
            if (subject.isPartnerDrill() || side == Side.FOLLOWER) {
                text(side.word(), StateWords.of(state.of(side)).in(language));
            }
        }
        if (subject.isPartnerDrill()) {
            text("between", StateWords.shared(state).in(language));
        }
        json.writeEndObject();
        List<Message> doubts = Stream.concat(
                        Stream.of(Side.values()).map(side -> StateWords.of(state.of(side))),
                        Stream.of(StateWords.shared(state)))
                .flatMap(StateWords::unknown)
                .toList();
        Json.texts(
                "doubts",
                doubts.stream().map(doubt -> doubt.in(language)).distinct().toList(),
                json);
    }

    private void text(String field, String text) throws IOException {
        if (!text.isEmpty()) {
            json.writeStringField(field, text);
        }
    }
}
