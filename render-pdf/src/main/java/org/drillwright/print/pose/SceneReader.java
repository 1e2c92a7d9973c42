package org.drillwright.print.pose;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Height;
import org.drillwright.notation.Line;
import org.drillwright.notation.Target;
import org.drillwright.phrase.Attack;
import org.drillwright.phrase.AttackEnd;
import org.drillwright.phrase.Count;
import org.drillwright.phrase.Fact;
import org.drillwright.phrase.Parried;
import org.drillwright.phrase.Played;
import org.drillwright.phrase.Replay;
import org.drillwright.phrase.Setting;
import org.drillwright.phrase.State;

/** Finds in a count as it was played what its picture shows. */
public final class SceneReader {

    private final Setting setting;
    private final Count count;

    private SceneReader(Setting setting, Count count) {
        this.setting = setting;
        this.count = count;
    }

    /** What each count of a drill shows, in their order. */
    public static List<Scene> read(Replay replay) {
        boolean mark = !replay.setting().partner()
                && replay.counts().stream()
                        .flatMap(count -> count.moves().stream())
                        .flatMap(played -> played.move().parts().stream())
                        .anyMatch(part -> isAtMark(part.action()));
        return replay.counts().stream()
                .map(count -> read(replay.setting(), count, mark))
                .toList();
    }

    private static boolean isAtMark(Action action) {
        return (action instanceof Action.Strike strike
                        && strike.aim().target().filter(Target.MARK::equals).isPresent())
                || (action instanceof Action.Lunge lunge
                        && lunge.aim().target().filter(Target.MARK::equals).isPresent());
    }

    /** What each stroke of a count shows, in their order; of a count of less than two, what the count shows. */
    public static List<Scene> strokes(Setting setting, Count count) {
        return new StrokeReader(setting.weapon(), count)
                .parts().stream().map(part -> read(setting, part)).toList();
    }

    /** What a count shows by itself; that somebody works at a mark is told by other counts. */
    public static Scene read(Setting setting, Count count) {
        return read(setting, count, false);
    }

    private static Scene read(Setting setting, Count count, boolean mark) {
        SceneReader reader = new SceneReader(setting, count);
        Map<Side, Aimed> aimed = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            reader.aimed(side).ifPresent(lines -> aimed.put(side, lines));
        }
        Optional<StrokeReader.Shown> shown = new StrokeReader(setting.weapon(), count).last();
        int last = shown.map(StrokeReader.Shown::last).orElse(count.moves().size() - 1);
        return new Scene(
                setting.weapon(),
                setting.hands(),
                setting.partner(),
                shown.map(StrokeReader.Shown::moment).orElse(count.end()),
                count.end(),
                aimed,
                shown.map(StrokeReader.Shown::stroke),
                FootReader.read(count.moves().subList(0, last + 1)),
                displaced(count.moves().subList(0, last + 1)),
                reader.gestures(),
                mark);
    }

    private static Map<Side, Action.Displacement> displaced(List<Played> moves) {
        Map<Side, Action.Displacement> displaced = new EnumMap<>(Side.class);
        for (Played played : moves) {
            if (played.move().action() instanceof Action.Evade evade) {
                displaced.put(played.move().by(), evade.how());
            }
        }
        return displaced;
    }

    private Map<Side, Gesture> gestures() {
        Map<Side, Gesture> gestures = new EnumMap<>(Side.class);
        for (Played played : count.moves()) {
            gesture(played.move().action())
                    .ifPresent(gesture -> gestures.put(played.move().by(), gesture));
        }
        return gestures;
    }

    private static Optional<Gesture> gesture(Action action) {
        if (action instanceof Action.Salute) {
            return Optional.of(Gesture.SALUTE);
        }
        if (action instanceof Action.OnBlade blade
                && (blade.contact() == Action.Contact.BEAT || blade.contact() == Action.Contact.FROISSEMENT)) {
            return Optional.of(Gesture.BEAT);
        }
        if (action instanceof Action.Invite invite) {
            boolean low = invite.aim().height().filter(Height.LOW::equals).isPresent();
            return Optional.of(low ? Gesture.GIVES_LOW : Gesture.GIVES_HIGH);
        }
        return Optional.empty();
    }

    private Optional<Aimed> aimed(Side target) {
        return launched(target)
                .or(() -> pending(target))
                .or(() -> unknown(target))
                .or(() -> guarding(target));
    }

    /** The last stroke that begins in this count. */
    private Optional<Aimed> launched(Side target) {
        for (int at = count.moves().size() - 1; at >= 0; at--) {
            Played played = count.moves().get(at);
            Optional<AttackEnd> end = played.move().by() == target ? Optional.empty() : AttackEnd.of(count, at);
            Optional<Attack> attack = played.after().attackOn(target);
            if (end.isPresent() && attack.isPresent()) {
                Threat threat = new Threat(attack.get(), played.before().measure(), end.get());
                return Optional.of(answered(target, threat, played.after(), at + 1));
            }
        }
        return Optional.empty();
    }

    /** A stroke that was under way before. */
    private Optional<Aimed> pending(Side target) {
        return count.begin()
                .attackOn(target)
                .flatMap(attack -> AttackEnd.ofPending(count, target)
                        .map(end -> new Threat(attack, count.begin().measure(), end)))
                .map(threat -> answered(target, threat, count.begin(), 0));
    }

    private Optional<Aimed> unknown(Side target) {
        boolean known = !setting.partner()
                || (count.begin().on(target).isKnown()
                        && count.moves().stream()
                                .allMatch(played -> played.after().on(target).isKnown())
                        && count.end().on(target).isKnown());
        return known
                ? Optional.empty()
                : Optional.of(
                        new Aimed(false, Optional.empty(), closing(count.end(), target, Optional.empty()), false));
    }

    /** Nobody attacks, but the hand goes to a position. */
    private Optional<Aimed> guarding(Side side) {
        boolean placed = count.moves().stream()
                .filter(played -> played.move().by() == side)
                .anyMatch(SceneReader::movesTheHand);
        return placed
                ? Optional.of(new Aimed(true, Optional.empty(), closing(count.end(), side, Optional.empty()), false))
                : Optional.empty();
    }

    private Aimed answered(Side target, Threat threat, State launched, int from) {
        List<Played> later = count.moves().subList(from, count.moves().size());
        Optional<State> parried = later.stream()
                .filter(played -> played.move().by() == target && movesTheHand(played))
                .map(Played::after)
                .reduce((first, next) -> next);
        if (parried.isEmpty()) {
            return new Aimed(true, Optional.of(threat), closing(launched, target, Optional.empty()), false);
        }
        boolean feint = parried.get().attackOn(target).filter(Attack::drawn).isPresent();
        Optional<Line> met = feint
                ? threat.attack().feintLine().flatMap(Fact::value)
                : threat.line().value();
        Closing closing = closing(parried.get(), target, met);
        boolean elsewhere = met.isPresent() && !closing.closed().contains(met.get());
        return new Aimed(true, Optional.of(threat), closing, elsewhere && isRound(parried.get(), target));
    }

    private static boolean isRound(State parried, Side by) {
        return parried.parried()
                .value()
                .flatMap(known -> known)
                .filter(parry -> parry.by() == by)
                .filter(Parried::circular)
                .isPresent();
    }

    private static boolean movesTheHand(Played played) {
        Action action = played.move().action();
        return action instanceof Action.Parry || action instanceof Action.Place;
    }

    private Closing closing(State state, Side side, Optional<Line> met) {
        return Closing.of(state.of(side), setting.parries(), met);
    }
}
