package org.drillwright.explain;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.check.Subject;
import org.drillwright.model.Side;
import org.drillwright.phrase.Fencer;
import org.drillwright.phrase.State;
import org.drillwright.source.Finding;
import org.drillwright.source.FormerRules;
import org.drillwright.terms.Terms;
import org.drillwright.wording.ConstantName;
import org.drillwright.wording.Message;

/** A drill as it was played, for programs; an unknown part is null. The page on explained drills describes the form. */
public final class ExplanationJson {

    public static final int VERSION = 2;

    private static final JsonFactory FACTORY = new JsonFactory();

    private final JsonGenerator json;
    private final Locale language;

    private ExplanationJson(JsonGenerator json, Locale language) {
        this.language = language;
        this.json = json;
    }

    /** @param language of the sentences; the words of the state are the same in all */
    public static String of(Subject subject, Locale language) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = FACTORY.createGenerator(text)) {
            json.useDefaultPrettyPrinter();
            new ExplanationJson(json, language).write(subject);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
        return text + "\n";
    }

    private void write(Subject subject) throws IOException {
        json.writeStartObject();
        json.writeNumberField("version", VERSION);
        json.writeStringField("drill", subject.drill().id());
        Account account = Account.of(subject);
        state("start", account.opening().standing().state());
        CountFindings findings = CountFindings.of(subject);
        json.writeArrayFieldStart("counts");
        for (int step = 0; step < account.counts().size(); step++) {
            count(account.counts().get(step), subject.count(step), findings.in(step));
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void count(Account.Part count, int number, List<Finding> findings) throws IOException {
        json.writeStartObject();
        json.writeNumberField("count", number);
        json.writeArrayFieldStart("moves");
        for (Account.Told move : count.moves()) {
            json.writeStartObject();
            json.writeStringField("by", move.by().word());
            json.writeStringField("read", move.read().in(language));
            text("fate", move.fate().map(Message::english));
            json.writeNumberField("refused", move.refused());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("findings");
        for (Finding finding : findings) {
            json.writeStartObject();
            json.writeStringField("rule", finding.rule());
            Optional<String> was = FormerRules.was(finding.rule());
            if (was.isPresent()) {
                json.writeStringField("was", was.get());
            }
            json.writeStringField("severity", finding.severity().name().toLowerCase(Locale.ROOT));
            json.writeStringField("what", finding.what().in(language));
            json.writeEndObject();
        }
        json.writeEndArray();
        state("after", count.standing().state());
        json.writeEndObject();
    }

    private void state(String field, State state) throws IOException {
        json.writeObjectFieldStart(field);
        for (Side side : Side.values()) {
            fencer(side.word(), state.of(side));
        }
        text(
                "measure",
                state.measure().isKnown() ? Optional.of(state.measure().words().english()) : Optional.empty());
        text(
                "blades",
                state.engagement()
                        .value()
                        .map(blades -> blades.map(
                                        one -> Terms.of(one.lineOf(Side.LEADER)).english())
                                .orElse("apart")));
        json.writeEndObject();
    }

    private void fencer(String field, Fencer fencer) throws IOException {
        json.writeObjectFieldStart(field);
        text("feet", fencer.feet().value().map(ConstantName::hyphened));
        text("hand", fencer.hand().value().map(position -> position.word()));
        text(
                "point",
                fencer.point()
                        .value()
                        .flatMap(line -> line)
                        .map(line -> Terms.of(line).english()));
        text("mask", fencer.masked().value().map(on -> on ? "on" : "off"));
        json.writeEndObject();
    }

    private void text(String field, Optional<String> value) throws IOException {
        if (value.isPresent()) {
            json.writeStringField(field, value.get());
        } else {
            json.writeNullField(field);
        }
    }
}
