package org.drillwright.phrase;

import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Line;
import org.drillwright.notation.Move;
import org.drillwright.notation.Position;
import org.drillwright.wording.Message;

/**
 * Tells which parry of a count belongs not to the feint that comes first but to the stroke behind it. A feint opens the line
 * that the hand leaves to meet it; where a count tells only the parry back into that line, the first one goes without saying
 * (Warford 1884, p. 18-20: a one-two is parried by a second simple parry).
 */
final class FeintsPassedOver {

    private static final Set<Path> DECEIVING = Set.of(Path.DECEIVE, Path.COUNTER_DISENGAGE, Path.DOUBLE);

    private final Setting setting;

    FeintsPassedOver(Setting setting) {
        this.setting = setting;
    }

    /** Whether the parry waits for the stroke that the partner still has to make, for it does not meet the feint. */
    boolean waits(State state, Move parry, Move stroke) {
        Optional<Line> shown = shown(state, parry.by());
        Optional<Action.Parry> named = named(parry.action());
        if (shown.isEmpty() || named.isEmpty()) {
            return false;
        }
        Position position = named.get().position().orElseThrow();
        boolean endsInFeint = setting.parries().row(position).lines().contains(shown.get());
        ParryJudge judge = new ParryJudge(setting, state.of(parry.by()), named.get(), new Objections());
        boolean meetsFeint = judge.closes(shown.get());
        return !endsInFeint && (!meetsFeint || endsIn(position, state, stroke));
    }

    /**
     * The state in which the stroke is made: the hand has left the line to which the parry comes back.
     *
     * @param where the count in words
     */
    State drawn(State state, Move parry, Move stroke, Message where) {
        Fencer fencer = state.of(parry.by());
        boolean comesBack = waits(state, parry, stroke)
                && named(parry.action())
                        .flatMap(Action.Parry::position)
                        .filter(position -> fencer.hand().is(position))
                        .isPresent();
        return comesBack ? state.with(parry.by(), fencer.open(where).withReach()) : state;
    }

    /** Whether the parry meets a feint that is shown, and the stroke still to come goes round it or elsewhere. */
    boolean isFallenFor(State state, Move parry, Move stroke) {
        Optional<Line> shown = shown(state, parry.by());
        Optional<Action.Parry> answer = answer(parry.action());
        boolean unseen = isShownSomewhere(state, parry.by());
        if ((shown.isEmpty() && !unseen) || answer.isEmpty() || stroke.strike().isEmpty()) {
            return false;
        }
        ParryJudge judge = new ParryJudge(setting, state.of(parry.by()), answer.get(), new Objections());
        if (shown.isEmpty()) {
            return line(state, stroke).filter(line -> !judge.closes(line)).isPresent();
        }
        boolean goesRound = DECEIVING.contains(stroke.strike().get().path());
        Optional<Line> goesTo = line(state, stroke);
        boolean otherHeight = goesTo.isEmpty()
                && new Sighting(state, setting, stroke.by(), stroke.strike().get())
                        .height()
                        .filter(height -> shown.get()
                                .height()
                                .filter(height.other()::equals)
                                .isPresent())
                        .isPresent();
        return judge.closes(shown.get())
                && (goesRound
                        || otherHeight
                        || goesTo.filter(line -> !judge.closes(line)).isPresent());
    }

    /** Whether a feint is shown of which it is not known where: what parries elsewhere than the stroke goes may be for it. */
    private static boolean isShownSomewhere(State state, Side to) {
        return state.attackOn(to)
                .filter(attack -> attack.feint() && !attack.line().isKnown())
                .isPresent();
    }

    /** The line in which a feint is shown to somebody. */
    private static Optional<Line> shown(State state, Side to) {
        return state.attackOn(to)
                .filter(attack -> !attack.meant())
                .flatMap(attack -> attack.line().value());
    }

    private boolean endsIn(Position position, State state, Move stroke) {
        return line(state, stroke)
                .filter(setting.parries().row(position).lines()::contains)
                .isPresent();
    }

    private Optional<Line> line(State state, Move stroke) {
        return stroke.strike()
                .flatMap(strike ->
                        new Sighting(state, setting, stroke.by(), strike).line().value());
    }

    /** The parry with the position that it is named for; a circular one meets the feint. */
    private static Optional<Action.Parry> named(Action action) {
        return answer(action).filter(parry -> parry.position().isPresent() && parry.kind() != ParryKind.CIRCULAR);
    }

    /** A parry, or a hand that goes to a position: 'close quarte' before a feint is a parry, too. */
    private static Optional<Action.Parry> answer(Action action) {
        if (action instanceof Action.Place place) {
            return Optional.of(new Action.Parry(
                    Optional.of(place.position()), ParryKind.UNSTATED, Aim.UNSTATED, place.inTheLunge()));
        }
        return action instanceof Action.Parry parry ? Optional.of(parry) : Optional.empty();
    }
}
