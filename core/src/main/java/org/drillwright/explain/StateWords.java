package org.drillwright.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.drillwright.model.Side;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.phrase.Engagement;
import org.drillwright.phrase.Fact;
import org.drillwright.phrase.Fencer;
import org.drillwright.phrase.State;

/** Says a state in words; what is unknown is said so, with since when. */
public final class StateWords {

    private StateWords() {}

    /** How one of the two stands. */
    public static String of(Fencer fencer) {
        List<String> parts = new ArrayList<>();
        parts.add(fact(
                fencer.feet().map(feet -> feet.name().toLowerCase(Locale.ROOT).replace('_', ' ')), "feet"));
        parts.add(fact(fencer.hand().map(Position::word), "hand"));
        if (fencer.extended().is(true)) {
            parts.add("arm extended"
                    + fencer.point()
                            .value()
                            .flatMap(line -> line)
                            .map(Line::words)
                            .map(line -> " to the " + line)
                            .orElse(""));
        } else if (!fencer.extended().isKnown()) {
            parts.add("arm " + unknown(fencer.extended()));
        }
        if (fencer.covers().is(false) && !fencer.extended().is(true)) {
            parts.add("closes nothing");
        }
        if (!fencer.masked().is(true)) {
            parts.add(fencer.masked().is(false) ? "mask off" : "mask " + unknown(fencer.masked()));
        }
        return String.join(", ", parts);
    }

    /** The measure and the contact. */
    public static String shared(State state) {
        return state.measure().words().english() + "; " + blades(state);
    }

    private static String blades(State state) {
        if (!state.engagement().isKnown()) {
            return "contact of the blades " + unknown(state.engagement());
        }
        return state.engagement()
                .value()
                .flatMap(blades -> blades)
                .map(StateWords::contact)
                .orElse("blades apart");
    }

    private static String contact(Engagement engagement) {
        String holder =
                engagement.holder().map(side -> ", held by the " + side.word()).orElse("");
        boolean one = engagement.leader() == engagement.follower();
        return "blades touch in the " + engagement.lineOf(Side.LEADER).words()
                + (one
                        ? ""
                        : " of the leader, the "
                                + engagement.lineOf(Side.FOLLOWER).words() + " of the follower")
                + holder;
    }

    private static String fact(Fact<String> fact, String part) {
        return fact.value().orElseGet(() -> part + " " + unknown(fact));
    }

    private static String unknown(Fact<?> fact) {
        return "unknown since "
                + (fact.since().isEmpty() ? "the beginning" : fact.since().english());
    }
}
