package org.drillwright.print.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.drillwright.model.Side;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Contact;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Position;
import org.drillwright.notation.Target;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.State;

/** Finds the last stroke of a count, and the moment at which its picture stands. */
final class StrokeReader {

    /** Before the first move. */
    private static final int BEFORE = -1;

    /**
     * A stroke and its end.
     *
     * @param last the last move that has happened in the moment of the picture, −1 if none has
     */
    record Shown(Stroke stroke, State moment, int last) {}

    private final Weapon weapon;
    private final Count count;

    StrokeReader(Weapon weapon, Count count) {
        this.weapon = weapon;
        this.count = count;
    }

    Optional<Shown> last() {
        return IntStream.iterate(count.moves().size() - 1, at -> at >= 0, at -> at - 1)
                .mapToObj(this::launched)
                .flatMap(Optional::stream)
                .findFirst()
                .or(() -> pending(Side.FOLLOWER))
                .or(() -> pending(Side.LEADER));
    }

    /** What a move launches. */
    private Optional<Shown> launched(int at) {
        Played played = count.moves().get(at);
        return AttackEnd.of(count, at).map(end -> {
            Side target = played.move().by().other();
            Attack attack = played.after().attackOn(target).orElseThrow();
            return shown(new Threat(attack, played.before().measure(), end), target, at);
        });
    }

    /** The count in parts, one for each stroke that it launches, each as a count of its own. */
    List<Count> parts() {
        List<Shown> launched = IntStream.range(0, count.moves().size())
                .mapToObj(this::launched)
                .flatMap(Optional::stream)
                .toList();
        List<Count> parts = new ArrayList<>();
        State begin = count.begin();
        int from = 0;
        for (Shown shown : launched.subList(0, Math.max(0, launched.size() - 1))) {
            int to = shown.last() + 1;
            State end = count.moves().get(shown.last()).after();
            parts.add(new Count(begin, count.moves().subList(from, to), end, Map.of()));
            begin = end;
            from = to;
        }
        parts.add(new Count(begin, count.moves().subList(from, count.moves().size()), count.end(), count.unmet()));
        return parts;
    }

    /** A stroke that was under way before. */
    private Optional<Shown> pending(Side target) {
        return count.begin()
                .attackOn(target)
                .flatMap(attack -> AttackEnd.ofPending(count, target)
                        .map(end -> shown(new Threat(attack, count.begin().measure(), end), target, BEFORE)));
    }

    private Shown shown(Threat threat, Side target, int launched) {
        int last = launched;
        Optional<Position> parry = Optional.empty();
        for (int at = launched + 1; at < count.moves().size() && follows(threat, target, at); at++) {
            last = at;
            parry = position(count.moves().get(at)).or(previous(parry));
        }
        Stroke stroke = new Stroke(
                target.other(),
                threat,
                path(launched),
                weapon == Weapon.SABRE || strikes(launched).anyMatch(Action.Strike::cut),
                aimedAt(launched),
                held(launched),
                bound(launched),
                parry);
        return new Shown(
                stroke, last == BEFORE ? count.begin() : count.moves().get(last).after(), last);
    }

    private static Supplier<Optional<Position>> previous(Optional<Position> parry) {
        return () -> parry;
    }

    /**
     * Whether a move still belongs to the moment: the one attacked does something while the stroke is under way, or goes
     * back from one that falls short.
     */
    private boolean follows(Threat threat, Side target, int at) {
        Played played = count.moves().get(at);
        boolean underWay = played.before().attackOn(target).isPresent();
        boolean steps = played.move().action() instanceof Action.Step;
        return played.move().by() == target && (underWay || (threat.end() instanceof AttackEnd.FallsShort && steps));
    }

    private static Optional<Position> position(Played played) {
        Action action = played.move().action();
        if (action instanceof Action.Parry parry) {
            return parry.position();
        }
        return action instanceof Action.Place place ? Optional.of(place.position()) : Optional.empty();
    }

    private Stream<Action> parts(int move) {
        List<Clause> none = List.of();
        return (move == BEFORE ? none : count.moves().get(move).move().parts())
                .stream().map(Clause::action);
    }

    private Stream<Action.Strike> strikes(int move) {
        return parts(move).filter(Action.Strike.class::isInstance).map(Action.Strike.class::cast);
    }

    private Path path(int move) {
        return strikes(move)
                .map(Action.Strike::path)
                .filter(path -> path != Path.UNSTATED)
                .findFirst()
                .orElse(Path.UNSTATED);
    }

    private Optional<Target> aimedAt(int move) {
        return parts(move)
                .map(StrokeReader::aim)
                .flatMap(aim -> aim.target().stream())
                .findFirst();
    }

    private static Aim aim(Action action) {
        if (action instanceof Action.Strike strike) {
            return strike.aim();
        }
        if (action instanceof Action.Lunge lunge) {
            return lunge.aim();
        }
        return action instanceof Action.OnBlade blade ? blade.aim() : Aim.UNSTATED;
    }

    private boolean held(int move) {
        return bound(move) || strikes(move).anyMatch(strike -> strike.opposition() || strike.path() == Path.GLIDE);
    }

    private boolean bound(int move) {
        return parts(move)
                .filter(Action.OnBlade.class::isInstance)
                .map(action -> ((Action.OnBlade) action).contact())
                .anyMatch(
                        contact -> contact == Contact.BIND || contact == Contact.CROISE || contact == Contact.ENVELOP);
    }
}
