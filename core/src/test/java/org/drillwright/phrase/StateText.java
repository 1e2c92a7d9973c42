package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Line;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;

/**
 * A state in one line, short enough to be written by hand before it is asked for:
 *
 * <pre>
 * L sixte open, arm to high-inside, lunge | F quarte closed | at 0 | blades high-inside held by F | right F quarte
 * </pre>
 *
 * <p>Left out is what a drill has between two phrases: on guard, arm bent, threatening nothing, mask on, blades apart,
 * nothing under way, nothing parried. {@code ?} is what is not known.
 */
final class StateText {

    private StateText() {}

    static String of(State state) {
        List<String> parts = new ArrayList<>();
        parts.add("L " + fencer(state.leader()));
        parts.add("F " + fencer(state.follower()));
        parts.add("at " + (state.measure().equals(Range.of(Measure.CLOSE)) ? "close" : state.measure()));
        if (!state.engagement().is(Optional.empty())) {
            parts.add("blades "
                    + optional(state.engagement()).map(StateText::blades).orElse("?"));
        }
        for (Side side : Side.values()) {
            Fact<Optional<Attack>> attack = state.on(side);
            if (!attack.is(Optional.empty())) {
                parts.add("on " + letter(side) + " "
                        + optional(attack).map(StateText::attack).orElse("?"));
            }
        }
        if (!state.parried().is(Optional.empty())) {
            parts.add(
                    "right " + optional(state.parried()).map(StateText::parried).orElse("?"));
        }
        state.changed()
                .ifPresent(change -> parts.add("changed by " + letter(change.by()) + " from "
                        + (change.left().is(Optional.empty())
                                ? "nothing"
                                : optional(change.left()).map(StateText::blades).orElse("?"))));
        return String.join(" | ", parts);
    }

    private static <T> Optional<T> optional(Fact<Optional<T>> fact) {
        return fact.value().flatMap(known -> known);
    }

    static String fencer(Fencer fencer) {
        List<String> parts = new ArrayList<>();
        parts.add(fencer.hand().value().map(Position::word).orElse("?")
                + (fencer.covers().is(true) ? " closed" : fencer.covers().is(false) ? " open" : " ?"));
        String point = fencer.point()
                .value()
                .map(line -> line.map(StateText::line).orElse("nothing"))
                .orElse("?");
        if (!fencer.extended().is(false)) {
            parts.add((fencer.extended().isKnown() ? "arm" : "arm?") + " to " + point);
        } else if (!point.equals("nothing")) {
            parts.add("bent to " + point);
        }
        if (fencer.reaching()) {
            parts.add("reaching");
        }
        if (!fencer.feet().is(Feet.ON_GUARD)) {
            parts.add(fencer.feet()
                    .value()
                    .map(feet -> feet == Feet.LUNGED ? "lunge" : "standing")
                    .orElse("feet?"));
        }
        if (fencer.gained()) {
            parts.add("gained");
        }
        if (!fencer.masked().is(true)) {
            parts.add(fencer.masked().isKnown() ? "unmasked" : "mask?");
        }
        return String.join(", ", parts);
    }

    private static String blades(Engagement blades) {
        String line = blades.leader() == blades.follower()
                ? line(blades.leader())
                : line(blades.leader()) + "/" + line(blades.follower());
        return line + blades.holder().map(side -> " held by " + letter(side)).orElse("");
    }

    private static String attack(Attack attack) {
        List<String> parts = new ArrayList<>();
        parts.add(attack.line().value().map(StateText::line).orElse("?"));
        attack.feintLine().flatMap(Fact::value).ifPresent(line -> parts.add("shown in " + line(line)));
        if (attack.role() != Role.ATTACK) {
            parts.add(attack.role().name().toLowerCase(Locale.ROOT));
        }
        if (!attack.meant()) {
            parts.add("threat");
        }
        if (attack.contact()) {
            parts.add("along the blade");
        }
        if (attack.drawn()) {
            parts.add("drawn");
        }
        if (attack.beyondTable()) {
            parts.add("beyond the table");
        }
        if (attack.reach() != 0) {
            parts.add("from " + attack.reach());
        }
        return String.join(", ", parts);
    }

    private static String parried(Parried parried) {
        List<String> parts = new ArrayList<>();
        parts.add(letter(parried.by()) + " "
                + parried.position().map(Position::word).orElse("?"));
        if (parried.against() != Role.ATTACK) {
            parts.add("against " + parried.against().name().toLowerCase(Locale.ROOT));
        }
        if (parried.feint()) {
            parts.add("of a feint");
        }
        if (parried.circular()) {
            parts.add("round");
        }
        return String.join(", ", parts);
    }

    private static String line(Line line) {
        return line.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static String letter(Side side) {
        return side == Side.LEADER ? "L" : "F";
    }
}
