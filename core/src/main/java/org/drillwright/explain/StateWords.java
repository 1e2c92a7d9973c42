package org.drillwright.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.phrase.Engagement;
import org.drillwright.phrase.Fact;
import org.drillwright.phrase.Feet;
import org.drillwright.phrase.Fencer;
import org.drillwright.phrase.State;
import org.drillwright.phrase.Where;
import org.drillwright.terms.Terms;
import org.drillwright.wording.ConstantName;
import org.drillwright.wording.Message;

/** Says a state in words; what is unknown is said so, with since when. */
public final class StateWords {

    private StateWords() {}

    /** How one of the two stands. */
    public static Message of(Fencer fencer) {
        List<Message> parts = new ArrayList<>();
        parts.add(fact(fencer.feet().map(StateWords::feet), "unknown.feet"));
        parts.add(fact(fencer.hand().map(Terms::of), "unknown.hand"));
        if (fencer.extended().is(true)) {
            parts.add(fencer.point()
                    .value()
                    .flatMap(line -> line)
                    .map(line -> Message.of(StateWords.class, "arm.extended.to", Terms.of(line)))
                    .orElse(Message.of(StateWords.class, "arm.extended")));
        } else if (!fencer.extended().isKnown()) {
            parts.add(unknown(fencer.extended(), "unknown.arm"));
        }
        if (fencer.covers().is(false) && !fencer.extended().is(true)) {
            parts.add(Message.of(StateWords.class, "closes.nothing"));
        }
        if (!fencer.masked().is(true)) {
            parts.add(
                    fencer.masked().is(false)
                            ? Message.of(StateWords.class, "mask.off")
                            : unknown(fencer.masked(), "unknown.mask"));
        }
        return Message.listed(parts);
    }

    private static Message feet(Feet feet) {
        return Message.of(StateWords.class, "feet." + ConstantName.hyphened(feet));
    }

    /** The measure and the contact. */
    public static Message shared(State state) {
        return Message.of(StateWords.class, "shared", state.measure().words(), blades(state));
    }

    private static Message blades(State state) {
        if (!state.engagement().isKnown()) {
            return unknown(state.engagement(), "unknown.contact");
        }
        return state.engagement()
                .value()
                .flatMap(blades -> blades)
                .map(StateWords::contact)
                .orElse(Message.of(StateWords.class, "blades.apart"));
    }

    private static Message contact(Engagement engagement) {
        Message line = Terms.of(engagement.lineOf(Side.LEADER));
        boolean one = engagement.leader() == engagement.follower();
        Message touch = one
                ? Message.of(StateWords.class, "blades.touch", line)
                : Message.of(StateWords.class, "blades.touch.each", line, Terms.of(engagement.lineOf(Side.FOLLOWER)));
        return engagement
                .holder()
                .map(side -> Message.of(StateWords.class, "blades.held", touch, Terms.of(side)))
                .orElse(touch);
    }

    /** The parts of such words that say what is unknown. */
    public static Stream<Message> unknown(Message words) {
        return words.parts()
                .filter(part ->
                        part instanceof Message.Worded said && said.key().matches("unknown\\..*|range\\.unknown"))
                .map(Message.class::cast);
    }

    private static Message fact(Fact<Message> fact, String unknown) {
        return fact.value().orElseGet(() -> unknown(fact, unknown));
    }

    private static Message unknown(Fact<?> fact, String key) {
        return Message.of(StateWords.class, key, fact.since().isEmpty() ? Where.part("beginning") : fact.since());
    }
}
