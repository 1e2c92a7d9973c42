package org.drillwright.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.notation.Width;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.Attempt;
import org.drillwright.phrase.ParryTravel;
import org.drillwright.phrase.Setting;
import org.drillwright.phrase.State;

/** Names the parries that would close a line from where a hand stands, and what each would be called. */
public final class Closers {

    /** The positions that most schools teach with a thrusting weapon; the others are named only if the hand stands there. */
    private static final Set<Position> USUAL =
            EnumSet.of(Position.QUARTE, Position.SIXTE, Position.SEPTIME, Position.OCTAVE);

    private Closers() {}

    /**
     * One sentence, such as {@code From sixte, quarte (a simple parry) or circular sixte would close it.} Each was played where
     * the fault was found; empty if none can be made there.
     */
    public static String sentence(Setting setting, Fault fault, Line line) {
        if (isHeld(fault)) {
            return cedes(setting, fault)
                    ? "The " + fault.by().word() + "'s blade is held: a ceding parry meets it."
                    : "";
        }
        Optional<Position> hand = fault.before().of(fault.by()).hand().value();
        List<String> names = names(setting, fault, hand, line);
        if (names.isEmpty()) {
            return "";
        }
        String from = hand.map(position -> "From " + position.word() + ", ").orElse("");
        String list = String.join(" or ", names);
        return Sentence.capital(from + list + " would close it", ".");
    }

    /** A blade that a bind carries cannot leave for another line or go round; it gives way: common practice, no source. */
    private static boolean isHeld(Fault fault) {
        State state = fault.before();
        boolean along = state.attackOn(fault.by()).filter(Attack::contact).isPresent();
        return along
                && state.engagement()
                        .value()
                        .flatMap(blades -> blades)
                        .filter(blades -> blades.holds(fault.by()))
                        .isPresent();
    }

    private static boolean cedes(Setting setting, Fault fault) {
        return Stream.of(Position.values())
                .filter(position -> setting.parries().row(position).firm())
                .anyMatch(position -> fault.attempt().parries(fault.by(), position, ParryKind.CEDING));
    }

    private static List<String> names(Setting setting, Fault fault, Optional<Position> hand, Line line) {
        Attempt attempt = fault.attempt();
        List<String> names = new ArrayList<>();
        for (Position position : setting.parries().closing(line)) {
            boolean thrusting = line.height().isPresent();
            if ((!thrusting || USUAL.contains(position)) && attempt.parries(fault.by(), position, ParryKind.UNSTATED)) {
                names.add(position.word() + called(setting, hand, position));
            }
        }
        hand.filter(position -> circles(setting, position, line))
                .filter(position -> attempt.parries(fault.by(), position, ParryKind.CIRCULAR))
                .ifPresent(position -> names.add("circular " + position.word()));
        return names;
    }

    private static String called(Setting setting, Optional<Position> hand, Position to) {
        return hand.flatMap(from -> ParryTravel.kind(setting, from, to))
                .filter(kind -> kind != ParryKind.UNSTATED)
                .map(kind -> " (a " + kind.words() + ")")
                .orElse("");
    }

    private static boolean circles(Setting setting, Position hand, Line line) {
        if (line.height().isEmpty()) {
            return false;
        }
        Line other = Line.of(
                line.height().orElse(Height.HIGH),
                line.width().orElse(Width.INSIDE).other());
        return setting.parries().row(hand).firm()
                && setting.parries().row(hand).lines().contains(other);
    }
}
