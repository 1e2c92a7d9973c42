package org.drillwright.phrase;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Reply;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Utterance;
import org.drillwright.phrase.told.ToldClauses;

/**
 * What became, at the end of a count, of an attack that no move has answered.
 *
 * @param refusal why that cannot be, if it can't
 * @param after the state with the attack gone, or still under way
 */
record LeftUnmet(State after, Optional<Refusal> refusal) {

    /** @param nextTurns what both are told on the next count; empty if there is none */
    static LeftUnmet of(
            State begin,
            State end,
            Side side,
            List<Played> played,
            Map<Side, Utterance> turns,
            Map<Side, Utterance> nextTurns) {
        Optional<Attack> attack = end.attackOn(side).filter(Attack::meant);
        if (attack.isEmpty()) {
            boolean runsOn = stepsOnToThePoint(begin, end, side, played)
                    && !ownsTo(nextTurns.getOrDefault(side, Utterance.NOTHING));
            return new LeftUnmet(
                    end,
                    runsOn ? Optional.of(new Refusal.NotOwnedTo(Refusal.Arrival.POINT_IN_LINE)) : Optional.empty());
        }
        State gone = end.noAttackOn(side);
        boolean drawnNow = attack.get().drawn() && begin.attackOn(side).isEmpty();
        if (drawnNow) {
            boolean leftOff = comesUp(nextTurns.getOrDefault(side.other(), Utterance.NOTHING))
                    && !mayAnswer(nextTurns.getOrDefault(side, Utterance.NOTHING));
            return leftOff
                    ? new LeftUnmet(gone, Optional.of(new Refusal.NotOwnedTo(Refusal.Arrival.PAST_THE_PARRY)))
                    : new LeftUnmet(end, Optional.empty());
        }
        if (fellForFeint(begin, side, played)) {
            State past = end.withAttackOn(side, Fact.of(attack.map(Attack::afterDrawing)));
            return new LeftUnmet(past, Optional.empty());
        }
        boolean counters = attack.get().role().stops()
                || countersOutOfTheWay(side.other(), played)
                || standsInLine(begin.of(side.other()), end.of(side.other()));
        if (counters && ownsTo(nextTurns.getOrDefault(side, Utterance.NOTHING))) {
            return new LeftUnmet(end, Optional.empty());
        }
        if (showsTarget(side, played)) {
            return new LeftUnmet(gone, Optional.empty());
        }
        if (isUnread(turns.getOrDefault(side, Utterance.NOTHING))) {
            return new LeftUnmet(end.withAttackOn(side, Fact.unknown(Where.WORDS_NOT_READ)), Optional.empty());
        }
        if (stepsBack(side, played)) {
            boolean tooShort = end.measure().most() <= attack.get().reach()
                    && end.measure().isKnown();
            return new LeftUnmet(
                    gone,
                    tooShort
                            ? Optional.of(new Refusal.RetreatTooShort(
                                    end.measure(),
                                    attack.get().reach() + 1 - end.measure().most()))
                            : Optional.empty());
        }
        boolean deceived = onlyCovers(side, played);
        if (deceived && ownsTo(nextTurns.getOrDefault(side, Utterance.NOTHING))) {
            return new LeftUnmet(end, Optional.empty());
        }
        if (deceived && isRiposte(attack.get(), begin, side.other())) {
            return new LeftUnmet(gone, Optional.of(new Refusal.HandDeceived()));
        }
        if (deceived && wentBefore(side, played)) {
            return new LeftUnmet(gone, Optional.of(new Refusal.HoldUnderAttack()));
        }
        if (attack.get().contact() && yields(side, played)) {
            return new LeftUnmet(gone, Optional.of(new Refusal.HoldUnderAttack()));
        }
        boolean stopped = counters
                && played.stream()
                        .filter(one -> one.move().by() == side)
                        .anyMatch(one -> one.move().isAssault() || comesNearer(one));
        boolean pastTheParry = attack.get().drawn();
        return new LeftUnmet(
                gone,
                Optional.of(
                        pastTheParry
                                ? new Refusal.NotOwnedTo(Refusal.Arrival.PAST_THE_PARRY)
                                : stopped
                                        ? new Refusal.NotOwnedTo(Refusal.Arrival.STOP_HIT)
                                        : new Refusal.Unanswered(attack.get().line())));
    }

    /** Whether the blade is let go, so that what comes along it is let in. */
    private static boolean yields(Side side, List<Played> played) {
        return played.stream()
                .anyMatch(one -> one.move().by() == side && one.move().action().isReply(Reply.YIELD));
    }

    /** Whether the next turn may say what becomes of a stroke that has deceived a parry: it is met, gone from, or taken. */
    private static boolean mayAnswer(Utterance nextTurn) {
        return ownsTo(nextTurn)
                || nextTurn.clauses().stream()
                        .map(Clause::action)
                        .anyMatch(action -> action instanceof Action.Parry
                                || action instanceof Action.Place
                                || action instanceof Action.Evade
                                || Footwork.goesBack(action));
    }

    /** Whether who made the stroke is told to leave off, and nothing else. */
    private static boolean comesUp(Utterance nextTurn) {
        List<Clause> clauses = ToldClauses.of(nextTurn);
        return clauses.stream().allMatch(Clause::isCertain)
                && clauses.stream()
                        .map(Clause::action)
                        .anyMatch(action -> action instanceof Action.Recover || action instanceof Action.OnGuard);
    }

    /**
     * Whether a step forward, and nothing else of the one who makes it, ends on a point that only threatened before it (Technical
     * Rules t.84.1, t.89.5: who runs on to a point in line is hit).
     */
    private static boolean stepsOnToThePoint(State begin, State end, Side side, List<Played> played) {
        Optional<Attack> point = end.attackOn(side).filter(threat -> !threat.meant() && !threat.feint());
        boolean nowIn =
                point.filter(threat -> end.measure().most() <= threat.reach()).isPresent();
        boolean wasOut =
                point.filter(threat -> begin.measure().least() > threat.reach()).isPresent();
        List<Played> own =
                played.stream().filter(one -> one.move().by() == side).toList();
        return nowIn
                && wasOut
                && end.of(side.other()).extended().is(true)
                && own.stream().anyMatch(LeftUnmet::comesNearer)
                && own.stream()
                        .allMatch(one -> one.move().isCertain()
                                && (comesNearer(one) || stays(one.move().action())));
    }

    private static boolean stays(Action action) {
        return action.isReply(Action.Reply.HOLD) || action.isReply(Action.Reply.WAIT);
    }

    private static boolean comesNearer(Played played) {
        return played.move().action() instanceof Action.Step step && step.foot().halfSteps() > 0;
    }

    /** Whether the hand parried on this count what was but a feint of a count before, and the attack came after that. */
    private static boolean fellForFeint(State begin, Side side, List<Played> played) {
        Optional<Attack> shown = begin.attackOn(side).filter(attack -> !attack.meant());
        return shown.isPresent()
                && played.stream()
                        .filter(one -> one.move().by() == side
                                && (one.move().action() instanceof Action.Parry
                                        || one.move().action() instanceof Action.Place))
                        .anyMatch(one -> one.before().attackOn(side).equals(shown));
    }

    /**
     * Who is stopped is in the midst of an attack, and owns to the touch when that is over, on the next count: common practice,
     * no source. Words of that count that were not read may own to it.
     */
    private static boolean ownsTo(Utterance nextTurn) {
        return ToldClauses.of(nextTurn).stream().anyMatch(clause -> !clause.isCertain() || isOwningTo(clause.action()));
    }

    /** Who hits in the midst of an attack and goes out of its way stops it, however the hit is called. */
    private static boolean countersOutOfTheWay(Side by, List<Played> played) {
        return stepsBack(by, played)
                || played.stream()
                        .anyMatch(one -> one.move().by() == by && one.move().action() instanceof Action.Evade);
    }

    /** Whether the arm was out before the count, and the feet have stayed: who comes on runs upon that point. */
    private static boolean standsInLine(Fencer before, Fencer after) {
        return before.extended().is(true)
                && before.feet().is(Feet.ON_GUARD)
                && after.feet().is(Feet.ON_GUARD);
    }

    /** Whether it takes a touch, owns to one, or may. */
    static boolean isOwningTo(Action action) {
        if (action instanceof Action.Unread) {
            return true;
        }
        return (action instanceof Action.Aside aside && aside.trifle() == Action.Trifle.ACKNOWLEDGE)
                || action.isReply(Action.Reply.RECEIVE);
    }

    /** Who opens a line on this very count, with a hand that goes elsewhere or not, offers the touch: common practice, no source. */
    static boolean showsTarget(Side side, List<Played> played) {
        List<Played> own =
                played.stream().filter(one -> one.move().by() == side).toList();
        return own.stream().anyMatch(one -> one.move().action() instanceof Action.Invite)
                && own.stream()
                        .allMatch(one -> one.move().isCertain()
                                && (one.move().action() instanceof Action.Invite
                                        || one.move().action() instanceof Action.Place));
    }

    /** Whether all that a side did was to put the hand where the stroke then went round it. */
    private static boolean onlyCovers(Side side, List<Played> played) {
        List<Played> own =
                played.stream().filter(one -> one.move().by() == side).toList();
        return !own.isEmpty()
                && own.stream()
                        .allMatch(one -> one.move().isCertain() && one.move().action() instanceof Action.Place);
    }

    /** Whether the leader's hand had gone there before anything attacked, and so gave the line away. */
    private static boolean wentBefore(Side side, List<Played> played) {
        return side == Side.LEADER
                && played.stream()
                        .filter(one -> one.move().by() == side)
                        .allMatch(one -> one.before().on(side).is(Optional.empty()));
    }

    /** Whether it is called a riposte, or comes behind the feint of one, from who has parried before. */
    private static boolean isRiposte(Attack attack, State begin, Side by) {
        boolean parried = begin.parried()
                .value()
                .flatMap(known -> known)
                .filter(one -> one.by() == by)
                .isPresent();
        return attack.role() == Action.Role.RIPOSTE || attack.role() == Action.Role.COUNTER_RIPOSTE || parried;
    }

    private static boolean isUnread(Utterance turn) {
        return (turn.clauses().isEmpty() && turn.tradeWords() == 0) || !turn.isRead();
    }

    private static boolean stepsBack(Side side, List<Played> played) {
        return played.stream()
                .filter(one -> one.move().by() == side)
                .map(one -> one.move().action())
                .anyMatch(Footwork::goesBack);
    }
}
