package org.drillwright.phrase;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Path;
import org.drillwright.notation.Line;
import org.drillwright.notation.Move;
import org.drillwright.wording.Message;
import org.jspecify.annotations.Nullable;

/**
 * Decides whose move comes next within a count: what attacks before what answers it, whoever makes it; where neither
 * answers the other, the leader goes first. Within a turn the order written stands.
 */
final class CountOrder {

    private final Deque<Move> leader;
    private final Deque<Move> follower;

    private final State begin;
    private final FeintsPassedOver feints;
    private final GuardAtSabre guards;
    private final Setting setting;

    CountOrder(State begin, List<Move> leader, List<Move> follower, Setting setting) {
        this.begin = begin;
        this.feints = new FeintsPassedOver(setting);
        this.guards = new GuardAtSabre(setting);
        this.setting = setting;
        this.leader = new ArrayDeque<>(leader);
        this.follower = new ArrayDeque<>(follower);
    }

    /** The next move in this state; empty when the count is over. */
    Optional<Move> next(State state) {
        if (leader.isEmpty() || follower.isEmpty()) {
            return Optional.ofNullable(leader.isEmpty() ? follower.poll() : leader.poll());
        }
        boolean followerFirst = rank(follower.peek(), state, leader) < rank(leader.peek(), state, follower);
        return Optional.ofNullable(followerFirst ? follower.poll() : leader.poll());
    }

    /** The lower goes first. */
    private int rank(@Nullable Move move, State state, Deque<Move> others) {
        if (move == null) {
            return Integer.MAX_VALUE;
        }
        Action action = move.action();
        Side by = move.by();
        if (move.isAssault()) {
            return strikeRank(action, state.of(by), others);
        }
        if (action instanceof Action.Parry || action instanceof Action.Place || action instanceof Action.Evade) {
            boolean drawn = threatens(others)
                    && ((isDrawn(move) && !meetsWhatIsShown(move, state, others))
                            || uncovers(move, state, others)
                            || isDeceived(move, state, others)
                            || fallsForFeint(state, move, others));
            boolean meets = comes(state, by, others) && !waits(state, move, others);
            return drawn || meets ? 0 : threatens(others) ? 9 : 4;
        }
        if (isAnswer(action)) {
            boolean owed = state.attackOn(by).filter(Attack::meant).isPresent();
            return owed ? 1 : leadsToOwnStroke(move) ? 4 : 9;
        }
        if (action instanceof Action.Recover || action instanceof Action.OnGuard) {
            return state.of(by).isLunged() ? 3 : 4;
        }
        if (Footwork.goesBack(action)) {
            return threatens(others) ? 8 : 4;
        }
        return comesIntoReach(action, state, others) ? 3 : 4;
    }

    /**
     * Whether somebody comes forward to where a stroke reaches that falls short before: it is made on the step (Britannica, 11th
     * ed., p. 594, attacks on the preparation).
     */
    private boolean comesIntoReach(Action action, State state, Deque<Move> others) {
        boolean forward = action instanceof Action.Step step && step.foot().halfSteps() > 0;
        return forward
                && others.stream()
                        .filter(Move::isAssault)
                        .findFirst()
                        .filter(stroke -> fallsShort(stroke, state))
                        .isPresent();
    }

    private boolean fallsShort(Move stroke, State state) {
        int nearer = stroke.steps().stream()
                .mapToInt(step -> step.foot().halfSteps() * step.times())
                .sum();
        int reach = stroke.strike()
                .map(strike -> new Sighting(state, setting, stroke.by(), strike).reach())
                .orElse(0);
        int lunges = stroke.lunge().isPresent() && !state.of(stroke.by()).isLunged() ? 1 : 0;
        boolean shown = stroke.strike()
                .filter(strike -> strike.feint() || strike.falseAttack() || strike.role() == Action.Role.EXTENSION)
                .isPresent();
        return !shown && state.measure().least() - nearer / 2 - lunges > reach;
    }

    /**
     * A hand that goes somewhere in the same turn as the touch is taken has been drawn there before the stroke ('go to
     * quarte, find nothing, and take the touch'); one that uncovers a line there has invited it.
     */
    private boolean isDrawn(Move move) {
        return move.action() instanceof Action.Place
                && own(move).stream()
                        .anyMatch(later -> later.action().isReply(Action.Reply.RECEIVE)
                                || later.action() instanceof Action.Invite);
    }

    /**
     * A hand that the leader moves, unasked and not called a parry, from the line that is then attacked, or to the other
     * height, has gone there before: it gives the line away (common practice, no source). Where it stood and nobody knows, it
     * may have stood in that line.
     */
    private boolean uncovers(Move move, State state, Deque<Move> others) {
        if (move.by() != Side.LEADER
                || !(move.action() instanceof Action.Place place)
                || state.attackOn(move.by()).isPresent()
                || !state.on(move.by()).isKnown()) {
            return false;
        }
        Set<Line> closed = setting.parries().row(place.position()).lines();
        return others.stream()
                .flatMap(other -> other.strike().stream())
                .findFirst()
                .filter(strike ->
                        !strike.feint() && !isRiposte(state, strike, move.by().other()))
                .map(strike -> new Sighting(state, setting, move.by().other(), strike))
                .filter(stroke -> leaves(move.by(), closed, state, stroke))
                .isPresent();
    }

    private boolean leaves(Side by, Set<Line> closed, State state, Sighting stroke) {
        boolean otherHeight = stroke.height()
                .filter(height -> closed.stream()
                        .allMatch(line -> line.height().filter(height::equals).isEmpty()))
                .isPresent();
        boolean stood = state.of(by)
                .hand()
                .value()
                .map(held -> setting.parries().row(held).lines())
                .map(lines -> stroke.line().value().filter(lines::contains).isPresent())
                .orElse(true);
        boolean open = stroke.line().value().filter(closed::contains).isEmpty();
        return otherHeight || (stood && open);
    }

    /** Whether a hand that is drawn away goes to the line of a feint, or of the first movement of a compound attack. */
    private boolean meetsWhatIsShown(Move move, State state, Deque<Move> others) {
        return move.action() instanceof Action.Place place
                && others.stream()
                        .filter(Move::isAssault)
                        .findFirst()
                        .flatMap(stroke -> shown(stroke, state))
                        .filter(setting.parries().row(place.position()).lines()::contains)
                        .isPresent();
    }

    private Optional<Line> shown(Move stroke, State state) {
        return stroke.strike().flatMap(strike -> {
            Sighting sighting = new Sighting(state, setting, stroke.by(), strike);
            boolean compound = strike.path() == Path.ONE_TWO || strike.path() == Path.DOUBLE;
            return compound
                    ? sighting.from().value().map(Mirror::otherSide)
                    : sighting.line().value().filter(line -> strike.feint());
        });
    }

    /**
     * A hand that covers a line waits for the straight riposte; who ripostes goes round it into the line that it leaves
     * (L'Abbat 1734, ch. X), and so it has been there before the stroke.
     */
    private boolean isDeceived(Move move, State state, Deque<Move> others) {
        if (!(move.action() instanceof Action.Place place)) {
            return false;
        }
        return others.stream()
                .flatMap(other -> other.strike().stream())
                .findFirst()
                .filter(strike -> isRiposte(state, strike, move.by().other()) && goesRound(strike.path()))
                .flatMap(strike -> new Sighting(state, setting, move.by().other(), strike)
                        .line()
                        .value())
                .filter(line -> !setting.parries().row(place.position()).lines().contains(line))
                .isPresent();
    }

    /** Whether it is called a riposte, or is made by who has just parried. */
    private static boolean isRiposte(State state, Action.Strike strike, Side by) {
        return switch (strike.role()) {
            case RIPOSTE, COUNTER_RIPOSTE -> true;
            case ATTACK ->
                state.parried()
                        .value()
                        .flatMap(known -> known)
                        .filter(parried -> parried.by() == by)
                        .isPresent();
            default -> false;
        };
    }

    private static boolean goesRound(Action.Path path) {
        return switch (path) {
            case DISENGAGE, CUT_OVER, COUNTER_DISENGAGE, DECEIVE -> true;
            default -> false;
        };
    }

    private Deque<Move> own(Move move) {
        return move.by() == Side.LEADER ? leader : follower;
    }

    private static boolean isAnswer(Action action) {
        return action instanceof Action.Answer
                || (action instanceof Action.Aside aside && aside.trifle() == Action.Trifle.ACKNOWLEDGE);
    }

    /** A hand or a blade that is kept where it is while the same turn's stroke goes out from there. */
    private boolean leadsToOwnStroke(Move move) {
        boolean kept = move.action() instanceof Action.Answer answer && answer.reply() != Action.Reply.RECEIVE;
        return kept && threatens(own(move));
    }

    private boolean waits(State state, Move parry, Deque<Move> others) {
        return others.stream()
                .filter(Move::isAssault)
                .findFirst()
                .filter(stroke -> feints.waits(state, parry, stroke))
                .isPresent();
    }

    /** Whether the hand goes after a feint of a count before, which the partner's stroke now leaves. */
    private boolean fallsForFeint(State state, Move parry, Deque<Move> others) {
        return state.attackOn(parry.by()).equals(begin.attackOn(parry.by()))
                && others.stream()
                        .filter(Move::isAssault)
                        .findFirst()
                        .filter(stroke -> feints.isFallenFor(state, parry, stroke))
                        .isPresent();
    }

    /**
     * The state in which a move of this count is made.
     *
     * @param where the count in words
     */
    State before(Move move, State state, Message where) {
        Move answer = (move.by() == Side.LEADER ? follower : leader).peek();
        if (slips(move, state)) {
            return state.with(move.by(), begin.of(move.by())).withEngagement(begin.engagement());
        }
        return answer == null || !move.isAssault()
                ? state
                : guards.opened(feints.drawn(state, answer, move, where), answer, where);
    }

    /** Whether a point in line leaves the blade that has sought it on this count, which therefore has not met it. */
    private boolean slips(Move move, State state) {
        Fencer stood = begin.of(move.by());
        boolean disengages =
                move.strike().filter(strike -> strike.path() == Path.DISENGAGE).isPresent();
        return disengages
                && stood.extended().is(true)
                && stood.point().value().map(Optional::isPresent).orElse(true)
                && state.of(move.by()).point().is(Optional.empty());
    }

    /** An attack of this very count, or an older one when nothing newer is to come. */
    private boolean comes(State state, Side at, Deque<Move> others) {
        boolean there = state.attackOn(at).isPresent();
        boolean fresh = !state.attackOn(at).equals(begin.attackOn(at));
        return there && (fresh || !threatens(others));
    }

    private static int strikeRank(Action action, Fencer fencer, Deque<Move> others) {
        if (!(action instanceof Action.Strike strike)) {
            return 4;
        }
        boolean answersBlade = strike.path() == Path.COUNTER_DISENGAGE
                || strike.path() == Path.DECEIVE
                || (strike.path() == Path.DISENGAGE && fencer.extended().is(true) && seeksBlade(others));
        boolean stops = strike.role().stops();
        return stops ? 6 : answersBlade ? 5 : 4;
    }

    /** Whether a blade is sought that stands in line: it slips away from that, a dérobement (Technical Rules t.84). */
    private static boolean seeksBlade(Deque<Move> moves) {
        return moves.stream().anyMatch(move -> move.action() instanceof Action.OnBlade);
    }

    private static boolean threatens(Deque<Move> moves) {
        return moves.stream().anyMatch(Move::isAssault);
    }
}
