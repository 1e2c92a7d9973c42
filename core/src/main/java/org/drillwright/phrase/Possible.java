package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Depth;
import org.drillwright.notation.Action.Foot;
import org.drillwright.notation.Action.ParryKind;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Action.Reply;
import org.drillwright.notation.Action.Role;
import org.drillwright.notation.Action.Way;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Line;
import org.drillwright.notation.Move;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Target;
import org.drillwright.source.Span;

/**
 * Lists what is open to either side, out of a closed alphabet of simple actions, one for thrusting weapons and one for the
 * sabre.
 *
 * <p>If an attack that means to touch is under way at somebody, only that one moves: a parry to quarte, sixte, septime or
 * octave (circular if the hand stands there already, else by the shortest way), a step back, or the touch taken. Who is on
 * the lunge parries in the lunge and cannot step back. Otherwise each of the two may
 *
 * <ul>
 *   <li>step forward or back, unless on the lunge;
 *   <li>recover back or forward, if on the lunge (into the guard of the start);
 *   <li>move the hand to another of quarte, sixte, septime and octave, unless on the lunge;
 *   <li>thrust straight to one of the four lines, disengage, or cut over (the last two end where the blade's passing puts
 *       them), by extension or with a lunge. Behind one's own parry these are ripostes, behind the parry of a riposte
 *       counter-ripostes.
 * </ul>
 *
 * <p>At sabre the positions are tierce, quarte and quinte (no parry is circular), and the strokes are cuts to head, chest and
 * flank, after the phrases of Waite 1880.
 *
 * <p>A move is open if the phrase refuses nothing of it and it would not be idle: a stroke must be able to touch.
 */
public final class Possible {

    private static final List<Position> POSITIONS =
            List.of(Position.QUARTE, Position.SIXTE, Position.SEPTIME, Position.OCTAVE);

    private static final List<Position> SABRE_POSITIONS = List.of(Position.TIERCE, Position.QUARTE, Position.QUINTE);

    private static final List<Target> CUTS = List.of(Target.HEAD, Target.CHEST, Target.FLANK);

    private static final List<Line> LINES =
            List.of(Line.HIGH_INSIDE, Line.HIGH_OUTSIDE, Line.LOW_INSIDE, Line.LOW_OUTSIDE);

    private final State state;
    private final Setting setting;

    private Possible(State state, Setting setting) {
        this.state = state;
        this.setting = setting;
    }

    /** A move that is open, and what it leads to. */
    public record Open(Move move, State next) {}

    /** Everything open in a state, the leader's first, in the order of the alphabet above. */
    public static List<Open> in(State state, Setting setting) {
        Possible possible = new Possible(state, setting);
        List<Open> open = new ArrayList<>();
        for (Side side : Side.values()) {
            boolean othersTurn =
                    state.attackOn(side.other()).filter(Attack::meant).isPresent();
            if (!othersTurn) {
                open.addAll(possible.forSide(side));
            }
        }
        return open;
    }

    /** Everything open to one side, whoever's turn it is. */
    public static List<Open> in(State state, Setting setting, Side side) {
        return new Possible(state, setting).forSide(side);
    }

    private List<Open> forSide(Side side) {
        boolean attacked = state.attackOn(side).filter(Attack::meant).isPresent();
        List<List<Action>> candidates = attacked ? answers(side) : initiatives(side);
        return candidates.stream()
                .map(actions -> move(side, actions))
                .flatMap(move -> open(move).stream())
                .toList();
    }

    private Optional<Open> open(Move move) {
        Moment moment =
                Moment.alone(move.by(), Fact.HERE, state.of(move.by().other()).isLunged(), Fact.unknown(Fact.HERE));
        Outcome outcome = Play.play(state, move, setting, moment);
        boolean idle = move.isAssault()
                && outcome.next()
                        .attackOn(move.by().other())
                        .filter(Attack::meant)
                        .isEmpty();
        if (!outcome.refusals().isEmpty() || idle) {
            return Optional.empty();
        }
        boolean evades = state.attackOn(move.by()).isPresent() && move.action() instanceof Action.Step;
        if (!evades) {
            return Optional.of(new Open(move, outcome.next()));
        }
        boolean away = outcome.next().measure().least() > 0;
        return away ? Optional.of(new Open(move, outcome.next().noAttackOn(move.by()))) : Optional.empty();
    }

    private static Move move(Side side, List<Action> actions) {
        return new Move(
                side,
                actions.stream()
                        .map(action -> new Clause(action, Optional.empty(), Span.at(0), Clause.Join.BEGINS))
                        .toList());
    }

    private List<List<Action>> answers(Side side) {
        boolean lunged = state.of(side).isLunged();
        List<List<Action>> answers = new ArrayList<>();
        for (Position position : positions()) {
            boolean circles = state.of(side).hand().is(position) && !setting.isSabre();
            ParryKind kind = circles ? ParryKind.CIRCULAR : ParryKind.UNSTATED;
            answers.add(List.of(new Action.Parry(Optional.of(position), kind, Aim.UNSTATED, lunged)));
        }
        if (!lunged) {
            answers.add(List.of(new Action.Step(Foot.RETREAT, 1)));
        }
        answers.add(List.of(new Action.Answer(Reply.RECEIVE, Stance.UNSTATED)));
        return answers;
    }

    private List<List<Action>> initiatives(Side side) {
        List<List<Action>> initiatives = new ArrayList<>();
        if (state.of(side).isLunged()) {
            initiatives.add(List.of(new Action.Recover(Way.BACK, Stance.UNSTATED)));
            initiatives.add(List.of(new Action.Recover(Way.FORWARD, Stance.UNSTATED)));
        } else {
            initiatives.add(List.of(new Action.Step(Foot.ADVANCE, 1)));
            initiatives.add(List.of(new Action.Step(Foot.RETREAT, 1)));
            positions().stream()
                    .filter(position -> !state.of(side).hand().is(position))
                    .forEach(position -> initiatives.add(List.of(new Action.Place(position, false))));
        }
        for (Action.Strike stroke : strokes(side)) {
            initiatives.add(List.of(stroke));
            if (!state.of(side).isLunged() && state.measure().least() > 0) {
                initiatives.add(List.of(stroke, new Action.Lunge(Depth.FULL, Aim.UNSTATED)));
            }
        }
        return initiatives;
    }

    private List<Action.Strike> strokes(Side side) {
        List<Action.Strike> strokes = new ArrayList<>();
        Role role = role(side);
        if (setting.isSabre()) {
            return CUTS.stream().map(target -> cut(role, target)).toList();
        }
        LINES.forEach(line -> strokes.add(stroke(role, Path.DIRECT, Aim.at(line))));
        for (Path path : List.of(Path.DISENGAGE, Path.CUT_OVER)) {
            Action.Strike bare = stroke(role, path, Aim.UNSTATED);
            new Sighting(state, setting, side, bare)
                    .expected()
                    .value()
                    .ifPresent(line -> strokes.add(stroke(role, path, Aim.at(line))));
        }
        return strokes;
    }

    private List<Position> positions() {
        return setting.isSabre() ? SABRE_POSITIONS : POSITIONS;
    }

    private static Action.Strike cut(Role role, Target target) {
        return stroke(role, Path.DIRECT, Aim.at(target)).asCut();
    }

    private Role role(Side side) {
        Optional<Parried> own = state.parried().value().flatMap(known -> known).filter(parried -> parried.by() == side);
        if (own.isEmpty()) {
            return Role.ATTACK;
        }
        Role against = own.get().against();
        return against == Role.RIPOSTE || against == Role.COUNTER_RIPOSTE ? Role.COUNTER_RIPOSTE : Role.RIPOSTE;
    }

    private static Action.Strike stroke(Role role, Path path, Aim aim) {
        return Action.Strike.plain(role, path, aim);
    }
}
