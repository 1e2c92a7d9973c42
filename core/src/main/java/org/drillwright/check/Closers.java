package org.drillwright.check;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.notation.Width;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.ParryTravel;
import org.drillwright.phrase.Setting;
import org.drillwright.phrase.State;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** Names the parries that would close a line from where a hand stands, and what each would be called. */
public final class Closers {

    /** The positions that most schools teach with a thrusting weapon; the others are named only if the hand stands there. */
    private static final Set<Position> USUAL =
            EnumSet.of(Position.QUARTE, Position.SIXTE, Position.SEPTIME, Position.OCTAVE);

    private Closers() {}

    /**
     * One sentence, such as {@code From sixte, quarte (a simple parry) or circular sixte would close it.} Each was played where
     * the fault was found; it says nothing if none can be made there.
     */
    public static WayOut sentence(Setting setting, Fault fault, Line line) {
        if (isHeld(fault)) {
            return fault.ways()
                    .or(Message.none(), changes(setting, fault, line))
                    .told(cedes -> Message.of(Closers.class, "closers.held", Terms.of(fault.by())));
        }
        WaysOut ways = fault.ways();
        parries(setting, fault, line).forEach((name, parry) -> ways.or(name, Amendment.instead(parry)));
        return ways.told(names -> hand(fault)
                .map(position -> Message.of(Closers.class, "closers.from", Terms.of(position), Message.or(names)))
                .orElseGet(() -> Message.of(Closers.class, "closers.close", Message.or(names)))
                .capital());
    }

    /** Whether most schools teach a position. */
    public static boolean isUsual(Setting setting, Position position) {
        return setting.parries().row(position).firm() && (setting.isSabre() || USUAL.contains(position));
    }

    /** The parries that may close a line, in place of what was refused. */
    public static List<Amendment> changes(Setting setting, Fault fault, Line line) {
        return parries(setting, fault, line).values().stream()
                .map(Amendment::instead)
                .toList();
    }

    private static Optional<Position> hand(Fault fault) {
        return fault.before().of(fault.by()).hand().value();
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

    /**
     * What may close a line from where the hand stands, by its name; whether it does is shown by playing. A hand that stays where
     * it is meets nothing, unless the arm has been out.
     */
    private static Map<Message, Action> parries(Setting setting, Fault fault, Line line) {
        Map<Message, Action> parries = new LinkedHashMap<>();
        if (isHeld(fault)) {
            Stream.of(Position.values())
                    .filter(position -> setting.parries().row(position).firm())
                    .forEach(position -> parries.put(Terms.of(position), parry(fault, position, ParryKind.CEDING)));
            return parries;
        }
        Optional<Position> hand = hand(fault);
        boolean out = fault.before().of(fault.by()).extended().is(true);
        for (Position position : setting.parries().closing(line)) {
            boolean stays = !out && hand.equals(Optional.of(position));
            if (!stays && isUsual(setting, position)) {
                parries.put(called(setting, hand, position), parry(fault, position, ParryKind.UNSTATED));
            }
        }
        hand.filter(position -> circles(setting, position, line))
                .ifPresent(position -> parries.put(
                        Message.of(Closers.class, "closers.circular", Terms.of(position)),
                        parry(fault, position, ParryKind.CIRCULAR)));
        return parries;
    }

    private static Action parry(Fault fault, Position position, ParryKind kind) {
        return new Action.Parry(
                Optional.of(position),
                kind,
                Aim.UNSTATED,
                fault.before().of(fault.by()).isLunged());
    }

    private static Message called(Setting setting, Optional<Position> hand, Position to) {
        return hand.flatMap(from -> ParryTravel.kind(setting, from, to))
                .filter(kind -> kind != ParryKind.UNSTATED)
                .map(kind -> Message.of(Closers.class, "closers.kind", Terms.of(to), Terms.of(kind)))
                .orElse(Terms.of(to));
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
