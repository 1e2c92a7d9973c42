package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;
import org.drillwright.notation.Target;
import org.drillwright.notation.Width;
import org.drillwright.source.Span;

/** Plays what might be done in place of a move that was refused, in the state in which it was. */
public final class Attempt {

    private final Setting setting;
    private final State state;
    private final boolean othersLunge;

    /** @param othersLunge whether the partner has lunged in the same count */
    public Attempt(Setting setting, State state, boolean othersLunge) {
        this.setting = setting;
        this.state = state;
        this.othersLunge = othersLunge;
    }

    /** Whether the phrase refuses nothing of it. */
    public boolean plays(Move move) {
        return Play.play(state, move, setting, new Moment(move.by(), "here", othersLunge, Fact.unknown("here"), false))
                .refusals()
                .isEmpty();
    }

    /** Whether a move plays when somebody has done something before it, and that plays too. */
    public boolean playsAfter(Side first, Action done, Move move) {
        Move before = alone(first, done);
        Outcome outcome =
                Play.play(state, before, setting, new Moment(first, "here", false, Fact.unknown("here"), false));
        return outcome.refusals().isEmpty() && new Attempt(setting, outcome.next(), false).plays(move);
    }

    /** Whether an action plays in place of the move. */
    public boolean plays(Side by, Action action) {
        return plays(alone(by, action));
    }

    /** Whether so many steps back take somebody out of reach of the attack under way. */
    public boolean escapes(Side by, int steps) {
        return state.attackOn(by)
                .filter(attack -> state.measure().shift(steps).least() > attack.reach())
                .isPresent();
    }

    /** Whether a parry of the attack under way closes its line; one that stays where the hand stands is none. */
    public boolean parries(Side by, Position position, ParryKind kind) {
        boolean stays = kind == ParryKind.UNSTATED && state.of(by).hand().is(position);
        Action parry = new Action.Parry(
                Optional.of(position), kind, Aim.UNSTATED, state.of(by).isLunged());
        return !stays && plays(alone(by, parry));
    }

    /** Whether a move plays with its stroke sent to a line. */
    public boolean playsAt(Move move, Line line) {
        return plays(aimed(move, line));
    }

    /** Whether a move plays with its stroke made in another way. */
    public boolean playsBy(Move move, Action.Role role, Action.Path path) {
        return plays(changed(
                move,
                strike -> new Action.Strike(
                        role,
                        path,
                        strike.aim(),
                        strike.cut(),
                        strike.feint(),
                        strike.falseAttack(),
                        strike.opposition())));
    }

    /** Whether a move plays with something added in front of it or behind. */
    public boolean playsWith(Move move, Action added, boolean inFront) {
        Clause clause = clause(added);
        List<Clause> parts = new ArrayList<>(move.parts());
        parts.add(inFront ? 0 : parts.size(), clause);
        return plays(new Move(move.by(), parts));
    }

    private static Move aimed(Move move, Line line) {
        Aim aim = aim(line);
        List<Clause> parts = move.parts().stream()
                .map(part -> part.action() instanceof Action.Lunge lunge
                        ? part.with(new Action.Lunge(lunge.depth(), lunge.aim().isStated() ? aim : lunge.aim()))
                        : part)
                .toList();
        return changed(new Move(move.by(), parts), strike -> strike.at(aim));
    }

    private static Aim aim(Line line) {
        Optional<Height> height = line.height();
        Optional<Width> width = line == Line.INSIDE
                ? Optional.of(Width.INSIDE)
                : line == Line.OUTSIDE ? Optional.of(Width.OUTSIDE) : line.width();
        return new Aim(height, width, line == Line.HEAD ? Optional.of(Target.HEAD) : Optional.empty());
    }

    private static Move changed(Move move, UnaryOperator<Action.Strike> change) {
        return new Move(
                move.by(),
                move.parts().stream()
                        .map(part ->
                                part.action() instanceof Action.Strike strike ? part.with(change.apply(strike)) : part)
                        .toList());
    }

    private static Move alone(Side by, Action action) {
        return new Move(by, List.of(clause(action)));
    }

    private static Clause clause(Action action) {
        return new Clause(action, Optional.empty(), Span.at(0), Clause.Join.WITH);
    }
}
