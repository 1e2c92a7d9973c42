package org.drillwright.phrase;

import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Line;
import org.drillwright.notation.Position;

/** Finds in a count as it was played how its attacks end. */
final class AttackEnds {

    private final Count count;
    private final Side target;

    private AttackEnds(Count count, Side target) {
        this.count = count;
        this.target = target;
    }

    static Optional<AttackEnd> of(Count count, int move) {
        Played launched = count.moves().get(move);
        Side target = launched.move().by().other();
        Optional<Attack> attack = launched.after().attackOn(target);
        if (attack.isEmpty() || attack.equals(launched.before().attackOn(target))) {
            return Optional.empty();
        }
        if (launched.refusals().stream().anyMatch(Refusal.OutOfReach.class::isInstance)) {
            return Optional.of(new AttackEnd.FallsShort());
        }
        List<Played> later = count.moves().subList(move + 1, count.moves().size());
        return Optional.of(new AttackEnds(count, target).end(attack.get(), later));
    }

    static Optional<AttackEnd> ofPending(Count count, Side target) {
        return count.begin().attackOn(target).map(attack -> new AttackEnds(count, target).end(attack, count.moves()));
    }

    private AttackEnd end(Attack attack, List<Played> later) {
        for (Played played : later) {
            Optional<Attack> before = played.before().attackOn(target);
            Optional<Attack> after = played.after().attackOn(target);
            boolean own = played.move().by() == target;
            if (own && before.isPresent() && after.isEmpty()) {
                return answered(attack, played);
            }
            if (!own && before.isPresent() && !before.equals(after)) {
                return attack.meant() ? new AttackEnd.Withdrawn() : new AttackEnd.Threat();
            }
        }
        return atTheEnd(attack);
    }

    private AttackEnd atTheEnd(Attack attack) {
        if (!attack.meant()) {
            return new AttackEnd.Threat();
        }
        if (count.unmet().containsKey(target)) {
            return new AttackEnd.NotMet();
        }
        if (count.end().attackOn(target).isPresent()) {
            return new AttackEnd.UnderWay();
        }
        if (!count.end().on(target).isKnown()) {
            return new AttackEnd.Unknown();
        }
        return LeftUnmet.showsTarget(target, count.moves())
                ? new AttackEnd.Received()
                : new AttackEnd.Evaded(Action.Displacement.UNSTATED);
    }

    private static AttackEnd answered(Attack attack, Played played) {
        if (!played.move().isCertain()) {
            return new AttackEnd.Unknown();
        }
        Action action = played.move().action();
        if (action instanceof Action.Parry parry) {
            return parried(attack, played, parry.position());
        }
        if (action instanceof Action.Place place) {
            return parried(attack, played, Optional.of(place.position()));
        }
        if (action instanceof Action.Answer answer) {
            return attack.feint()
                    ? new AttackEnd.Threat()
                    : answer.reply() == Action.Reply.RECEIVE ? received(played) : new AttackEnd.NotMet();
        }
        if (action instanceof Action.Aside) {
            return new AttackEnd.Received();
        }
        if (action instanceof Action.Strike) {
            return new AttackEnd.Stopped();
        }
        if (action instanceof Action.Evade evade) {
            return new AttackEnd.Evaded(evade.how());
        }
        return action instanceof Action.Unread
                ? new AttackEnd.Unknown()
                : new AttackEnd.Evaded(Action.Displacement.UNSTATED);
    }

    /** Who takes a touch that cannot arrive is not touched. */
    private static AttackEnd received(Played played) {
        boolean away = played.refusals().stream().anyMatch(Refusal.OutOfReach.class::isInstance);
        return away ? new AttackEnd.FallsShort() : new AttackEnd.Received();
    }

    private static AttackEnd parried(Attack attack, Played played, Optional<Position> position) {
        for (Refusal refusal : played.refusals()) {
            if (refusal instanceof Refusal.ParryMisses miss) {
                return miss.firm() ? new AttackEnd.PastTheParry(miss.position()) : new AttackEnd.Unknown();
            }
            if (refusal instanceof Refusal.ParryAtOtherHeight other) {
                return new AttackEnd.PastTheParry(other.position());
            }
            if (refusal instanceof Refusal.CircleElsewhere
                    || refusal instanceof Refusal.CircleNotNeeded
                    || refusal instanceof Refusal.CircleWanted) {
                return new AttackEnd.Unknown();
            }
        }
        if (!attack.meant()) {
            return new AttackEnd.DrewParry();
        }
        boolean judged = position.isEmpty()
                || (!attack.beyondTable()
                        && !attack.line().is(Line.ARM)
                        && played.asked().stream().allMatch(Question::known));
        return judged ? new AttackEnd.Parried(position) : new AttackEnd.Unknown();
    }
}
