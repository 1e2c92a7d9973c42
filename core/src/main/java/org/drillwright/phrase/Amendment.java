package org.drillwright.phrase;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Line;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Position;
import org.drillwright.notation.Stance;
import org.drillwright.notation.Utterance;
import org.drillwright.source.Span;

/** What may be done otherwise where something was refused: the words of the drill as they would be then. */
public interface Amendment {

    /** The drill's words with the change made. */
    Rehearsal.Words made(Rehearsal.Words words, Spot spot);

    /** Other actions in place of what was refused. */
    static Amendment instead(Action... actions) {
        return own((turn, spot) -> spliced(turn, spot, refused -> told(actions)));
    }

    /** Actions of the same turn in front of what was refused. */
    static Amendment before(Action... actions) {
        return own((turn, spot) -> spliced(turn, spot, refused -> joined(told(actions), refused)));
    }

    /** Actions joined to what was refused, behind it. */
    static Amendment with(Action... actions) {
        return own((turn, spot) -> spliced(turn, spot, refused -> joined(refused, told(actions))));
    }

    /** Each action of what was refused done otherwise; the same where it is none of those meant. */
    static Amendment each(UnaryOperator<Action> other) {
        return own((turn, spot) -> spliced(
                turn,
                spot,
                refused -> refused.stream()
                        .map(clause -> clause.with(other.apply(clause.action())))
                        .toList()));
    }

    /** The same parry, of that kind. */
    static Amendment parriedAs(Action.ParryKind kind) {
        return each(action -> action instanceof Action.Parry parry
                ? new Action.Parry(parry.position(), kind, parry.aim(), parry.inTheLunge())
                : action);
    }

    /** A parry in each position, put where it is said. */
    static List<Amendment> parries(Function<Action, Amendment> put) {
        return Stream.of(Position.values())
                .map(position -> put.apply(
                        new Action.Parry(Optional.of(position), Action.ParryKind.UNSTATED, Aim.UNSTATED, false)))
                .toList();
    }

    /** Actions at the end of the turn. */
    static Amendment also(Action... actions) {
        return own((turn, spot) -> joined(turn, told(actions)));
    }

    /** Some actions of the turn left out; who then has nothing to do holds. */
    static Amendment without(Predicate<Action> some) {
        return own((turn, spot) -> less(turn, some));
    }

    /** Actions of the partner at the beginning of the count. */
    static Amendment partnerFirst(Action... actions) {
        return (words, spot) -> words.with(spot.part(), spot.by().other(), turn -> joined(told(actions), turn));
    }

    /** Actions of the partner at the end of the count. */
    static Amendment partnerAlso(Action... actions) {
        return (words, spot) -> words.with(spot.part(), spot.by().other(), turn -> joined(turn, told(actions)));
    }

    /** Some actions of the partner left out. */
    static Amendment partnerWithout(Predicate<Action> some) {
        return (words, spot) -> words.with(spot.part(), spot.by().other(), turn -> less(turn, some));
    }

    /** Actions at the end of one's own turn on the count before or behind. */
    static Amendment nearby(int counts, Action... actions) {
        return (words, spot) -> {
            int part = spot.part() + counts;
            return part < 0 || part >= words.counts().size()
                    ? words
                    : words.with(part, spot.by(), turn -> joined(turn, told(actions)));
        };
    }

    /** Actions at the beginning of the opening, of both. */
    static Amendment openedBy(Action... actions) {
        return (words, spot) ->
                words.with(Rehearsal.Words.OPENING, spot.by(), opening -> joined(told(actions), opening));
    }

    /** The start at another measure. */
    static Amendment begunAt(Measure measure) {
        Action stated = new Action.State(Optional.of(measure), Stance.UNSTATED);
        return (words, spot) -> new Rehearsal.Words(
                words.opening(),
                words.start().doing(joined(words.start().clauses(), told(stated))),
                words.counts(),
                words.closing());
    }

    /** Touches of the partner in any of some lines, from where the arm reaches or with a lunge. */
    static List<Amendment> partnerTouches(List<Line> lines) {
        Action lunge = new Action.Lunge(Action.Depth.FULL, Aim.UNSTATED);
        return lines.stream()
                .map(line -> Action.Strike.attack(Aim.at(line)))
                .flatMap(thrust -> Stream.of(partnerAlso(thrust), partnerAlso(thrust, lunge)))
                .toList();
    }

    /** A stroke sent elsewhere. */
    static Amendment at(Aim aim) {
        return each(action -> {
            if (action instanceof Action.Strike strike) {
                return strike.at(aim);
            }
            if (action instanceof Action.OnBlade onBlade && onBlade.carriesPoint()) {
                return new Action.OnBlade(onBlade.contact(), onBlade.position(), aim);
            }
            return action instanceof Action.Lunge lunge && lunge.aim().isStated()
                    ? new Action.Lunge(lunge.depth(), aim)
                    : action;
        });
    }

    /** A stroke made by another path; a lunge with an aim of its own carries one. */
    static Amendment along(Action.Path path) {
        return own((turn, spot) -> spliced(turn, spot, refused -> along(refused, path)));
    }

    private static List<Clause> along(List<Clause> refused, Action.Path path) {
        boolean strikes = refused.stream().anyMatch(clause -> clause.action() instanceof Action.Strike);
        Stream<Clause> carried = refused.stream()
                .filter(clause -> !strikes && clause.action() instanceof Action.Lunge)
                .map(clause -> clause.with(Action.Strike.attack(Aim.UNSTATED)));
        return Stream.concat(carried, refused.stream())
                .map(clause -> clause.action() instanceof Action.Strike strike
                        ? clause.with(strike.by(strike.role(), path))
                        : clause)
                .toList();
    }

    /** A stroke in another part in the phrase. */
    static Amendment as(Action.Role role) {
        return each(action -> action instanceof Action.Strike strike ? strike.by(role, strike.path()) : action);
    }

    /** What was refused moved to a count of its own behind this one, on which the partner recovers. */
    static Amendment onItsOwn(Action... meanwhile) {
        return (words, spot) -> {
            List<Clause> moved =
                    words.counts().get(spot.part()).getOrDefault(spot.by(), Utterance.NOTHING).clauses().stream()
                            .filter(spot::holds)
                            .toList();
            Rehearsal.Words left = words.with(
                    spot.part(),
                    spot.by(),
                    turn -> joined(
                            turn.stream().filter(clause -> !spot.holds(clause)).toList(), told(meanwhile)));
            Map<Side, Utterance> own = new EnumMap<>(Side.class);
            own.put(spot.by(), Utterance.NOTHING.doing(moved));
            Action recovery = new Action.Recover(Action.Way.BACK, Stance.UNSTATED);
            own.put(spot.by().other(), Utterance.NOTHING.doing(told(recovery)));
            List<Map<Side, Utterance>> counts = new ArrayList<>(left.counts());
            counts.add(spot.part() + 1, own);
            return new Rehearsal.Words(left.opening(), left.start(), counts, left.closing());
        };
    }

    /** The lunge of an earlier count made here. */
    static Amendment lungedHere() {
        Predicate<Action> lunges = Action.Lunge.class::isInstance;
        return (words, spot) -> {
            for (int part = spot.part() - 1; part >= 0; part--) {
                Utterance earlier = words.counts().get(part).getOrDefault(spot.by(), Utterance.NOTHING);
                if (earlier.actions().stream().anyMatch(lunges)) {
                    Rehearsal.Words later = words.with(part, spot.by(), turn -> less(turn, lunges));
                    return with(new Action.Lunge(Action.Depth.FULL, Aim.UNSTATED))
                            .made(later, spot);
                }
            }
            return words;
        };
    }

    /** The turn in which it was refused told otherwise. */
    private static Amendment own(BiFunction<List<Clause>, Spot, List<Clause>> change) {
        return (words, spot) -> words.with(spot.part(), spot.by(), turn -> change.apply(turn, spot));
    }

    /** A turn with its refused clauses changed, as one; behind all others where nothing was done. */
    private static List<Clause> spliced(List<Clause> turn, Spot spot, UnaryOperator<List<Clause>> change) {
        List<Clause> refused = turn.stream().filter(spot::holds).toList();
        List<Clause> made = new ArrayList<>();
        boolean done = false;
        for (Clause clause : turn) {
            if (!spot.holds(clause)) {
                made.add(clause);
            } else if (!done) {
                made.addAll(change.apply(refused));
                done = true;
            }
        }
        return done ? made : joined(turn, change.apply(List.of()));
    }

    private static List<Clause> less(List<Clause> turn, Predicate<Action> some) {
        List<Clause> left =
                turn.stream().filter(clause -> !some.test(clause.action())).toList();
        return left.isEmpty() ? told(new Action.Answer(Action.Reply.HOLD, Stance.UNSTATED)) : left;
    }

    private static List<Clause> told(Action... actions) {
        return Stream.of(actions)
                .map(action -> new Clause(action, Optional.empty(), Span.at(0), Clause.Join.WITH))
                .toList();
    }

    private static List<Clause> joined(List<Clause> first, List<Clause> then) {
        return Stream.concat(first.stream(), then.stream()).toList();
    }
}
