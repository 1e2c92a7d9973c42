package org.drillwright.phrase.told;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.drillwright.model.Side;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Move;

/** Groups a turn's clauses into moves. */
public final class TurnMoves {

    private final Side by;
    private final List<Clause> clauses;
    private final List<Move> moves = new ArrayList<>();

    private TurnMoves(Side by, List<Clause> clauses) {
        this.by = by;
        this.clauses = clauses;
    }

    /** @param lunged whether the side begins the count in the lunge */
    public static List<Move> of(Side by, List<Clause> turn, boolean lunged) {
        List<Clause> made = withLunges(withoutTrifles(turn), lunged);
        return new TurnMoves(by, withBinds(withContact(withoutIdleHolds(lungedParries(drawnParries(made)))))).group();
    }

    /** A thrust 'on the lunge' is made with a lunge by who stands, and from the lunge by who is down already. */
    private static List<Clause> withLunges(List<Clause> turn, boolean lunged) {
        boolean down = lunged
                || turn.stream()
                        .anyMatch(clause -> clause.action() instanceof Action.Lunge lunge
                                && lunge.depth() != Action.Depth.UNLESS_LUNGED);
        List<Clause> made = new ArrayList<>();
        for (Clause clause : turn) {
            boolean mayLunge =
                    clause.action() instanceof Action.Lunge lunge && lunge.depth() == Action.Depth.UNLESS_LUNGED;
            if (!mayLunge) {
                made.add(clause);
            } else if (!down || !clause.isCertain()) {
                Action lunge = new Action.Lunge(Action.Depth.FULL, Aim.UNSTATED);
                made.add(clause.with(lunge));
            }
        }
        return made;
    }

    /** A parry with which the touch is taken has met nothing: the hand only went there. */
    private static List<Clause> drawnParries(List<Clause> turn) {
        boolean taken = turn.stream().anyMatch(clause -> clause.action().isReply(Action.Reply.RECEIVE));
        boolean strikes = turn.stream().anyMatch(clause -> clause.action() instanceof Action.Strike);
        return turn.stream()
                .map(clause -> taken && !strikes ? drawn(clause) : clause)
                .toList();
    }

    private static Clause drawn(Clause clause) {
        return clause.action() instanceof Action.Parry parry
                        && parry.position().isPresent()
                        && parry.kind() != Action.ParryKind.CIRCULAR
                ? clause.with(new Action.Place(parry.position().orElseThrow(), parry.inTheLunge()))
                : keptGuard(clause);
    }

    /** A guard that is kept while the touch is taken is no answer to the stroke. */
    private static Clause keptGuard(Clause clause) {
        return clause.action() instanceof Action.Answer answer
                        && answer.reply() == Action.Reply.HOLD
                        && answer.stance().guard().isPresent()
                        && answer.stance().engaged().isEmpty()
                ? clause.with(new Action.Place(answer.stance().guard().orElseThrow(), false))
                : clause;
    }

    /** What touches nothing in the phrase does not part what belongs together. */
    private static List<Clause> withoutTrifles(List<Clause> turn) {
        List<Clause> kept = turn.stream()
                .filter(clause ->
                        !clause.isCertain() || !(clause.action() instanceof Action.Aside aside && aside.playsNothing()))
                .toList();
        return kept.isEmpty() ? turn : kept;
    }

    /** To hold the lunge and take the touch is to take the touch. */
    private static List<Clause> withoutIdleHolds(List<Clause> turn) {
        boolean answers = turn.stream().anyMatch(clause -> !isHold(clause) && !isIdle(clause));
        List<Clause> kept = new ArrayList<>();
        for (Clause clause : turn) {
            boolean idle = answers && isHold(clause) && !statesGuard(clause);
            if (!idle) {
                kept.add(clause);
            } else if (!clause.isCertain()) {
                kept.add(clause.with(new Action.Aside(Action.Trifle.OTHER)));
            }
        }
        return kept.isEmpty() ? turn : kept;
    }

    /** A bind or a press with an aim of its own carries the point there: the stroke named with it, or one unnamed. */
    private static List<Clause> withBinds(List<Clause> turn) {
        boolean strikes = turn.stream().anyMatch(clause -> clause.action() instanceof Action.Strike);
        Optional<Aim> carried = turn.stream()
                .map(Clause::action)
                .filter(Action.OnBlade.class::isInstance)
                .map(Action.OnBlade.class::cast)
                .filter(Action.OnBlade::carriesPoint)
                .map(Action.OnBlade::aim)
                .findFirst();
        List<Clause> clauses = new ArrayList<>();
        for (Clause clause : turn) {
            clauses.add(carried.map(aim -> aimed(clause, aim)).orElse(clause));
            if (!strikes && clause.action() instanceof Action.OnBlade onBlade && onBlade.carriesPoint()) {
                clauses.add(new Clause(
                        stroke(onBlade), clause.subject(), clause.span(), Clause.Join.WITH, clause.doubts()));
            }
        }
        return clauses;
    }

    /** Who keeps the contact and lunges goes along the blade: the feel of it is kept (Warford 1884, p. 17). */
    private static List<Clause> withContact(List<Clause> turn) {
        boolean strikes = turn.stream().anyMatch(clause -> clause.action() instanceof Action.Strike);
        List<Clause> clauses = new ArrayList<>();
        boolean kept = false;
        for (Clause clause : turn) {
            if (kept && clause.action() instanceof Action.Strike strike) {
                clauses.add(clause.with(strike.opposed()));
            } else if (kept
                    && !strikes
                    && clause.action() instanceof Action.Lunge lunge
                    && lunge.aim().isStated()) {
                clauses.add(clause.with(Action.Strike.attack(lunge.aim()).opposed()));
                clauses.add(clause);
            } else {
                clauses.add(clause);
            }
            kept |= keepsContact(clause);
        }
        return clauses;
    }

    private static boolean keepsContact(Clause clause) {
        return clause.action() instanceof Action.Answer answer
                && answer.reply() == Action.Reply.HOLD
                && answer.stance().engaged().equals(Optional.of(true));
    }

    private static Clause aimed(Clause clause, Aim aim) {
        if (clause.action() instanceof Action.Strike strike && !strike.aim().isStated()) {
            return clause.with(strike.aimed(aim));
        }
        return clause;
    }

    private static Action.Strike stroke(Action.OnBlade onBlade) {
        Action.Strike attack = Action.Strike.attack(onBlade.aim());
        return onBlade.contact() == Action.Contact.BEAT ? attack : attack.opposed();
    }

    /** Who stays in the lunge and parries, parries in the lunge. */
    private static List<Clause> lungedParries(List<Clause> turn) {
        if (turn.stream().noneMatch(TurnMoves::isHold)) {
            return turn;
        }
        return turn.stream()
                .map(clause -> clause.with(inTheLunge(clause.action())))
                .toList();
    }

    private static Action inTheLunge(Action action) {
        if (action instanceof Action.Parry parry) {
            return new Action.Parry(parry.position(), parry.kind(), parry.aim(), true);
        }
        return action instanceof Action.Place place ? new Action.Place(place.position(), true) : action;
    }

    private static boolean isHold(Clause clause) {
        return clause.action().isReply(Action.Reply.HOLD) || clause.action().isReply(Action.Reply.WAIT);
    }

    private static boolean isIdle(Clause clause) {
        return (clause.action() instanceof Action.Aside aside && aside.playsNothing())
                || clause.action() instanceof Action.State;
    }

    private static boolean statesGuard(Clause clause) {
        return clause.action() instanceof Action.Answer answer
                && answer.stance().isStated();
    }

    private List<Move> group() {
        int at = 0;
        while (at < clauses.size()) {
            int end = assaultEnd(at);
            List<Clause> parts = clauses.subList(at, end);
            if (end > at + 1) {
                moves.add(new Move(by, parts));
            } else {
                moves.add(new Move(by, List.of(clauses.get(at))));
            }
            at = end;
        }
        return moves;
    }

    /** Where the attack that begins here ends; behind this clause if it is no attack, or a bare one. */
    private int assaultEnd(int from) {
        boolean stroke = false;
        boolean lunge = false;
        Optional<Action.Strike> first = Optional.empty();
        int end = from;
        for (int at = from; at < clauses.size(); at++) {
            Action action = clauses.get(at).action();
            if (action instanceof Action.Strike strike) {
                if (stroke && !continues(first, strike, lunge)) {
                    break;
                }
                stroke = true;
                first = first.or(() -> Optional.of(strike));
                end = at + 1;
            } else if (action instanceof Action.Lunge) {
                if (lunge || isFeint(first)) {
                    break;
                }
                lunge = true;
                end = at + 1;
            } else if (!isForward(action)) {
                break;
            }
        }
        return Math.max(end, from + 1);
    }

    private static boolean isFeint(Optional<Action.Strike> strike) {
        return strike.map(Action.Strike::feint).orElse(false);
    }

    /** An extension leads to a touch in its own line. */
    private static boolean continues(Optional<Action.Strike> first, Action.Strike next, boolean lunged) {
        boolean bare = first.filter(strike -> strike.role() == Action.Role.EXTENSION && !strike.feint())
                .isPresent();
        boolean same = next.path() == Action.Path.DIRECT || next.path() == Action.Path.UNSTATED;
        boolean unsaid =
                first.filter(strike -> (strike.path() == Action.Path.UNSTATED || strike.path() == Action.Path.DECEIVE)
                                        && !strike.aim().isStated()
                                        && !strike.feint())
                                .isPresent()
                        && next.role() == Action.Role.ATTACK
                        && !next.feint();
        boolean leadsOn = first.filter(strike -> !strike.aim().isStated() && !strike.feint())
                        .isPresent()
                && next.role() == Action.Role.ATTACK
                && next.path() == Action.Path.UNSTATED
                && !next.feint();
        return unsaid
                || leadsOn
                || (bare && same && !next.feint())
                || (next.role() == Action.Role.EXTENSION && !lunged && !isFeint(first));
    }

    private static boolean isForward(Action action) {
        return action instanceof Action.Step step
                && (step.foot() == Action.Foot.ADVANCE
                        || step.foot() == Action.Foot.JUMP_FORWARD
                        || step.foot() == Action.Foot.CROSS_FORWARD
                        || step.foot() == Action.Foot.APPEL
                        || step.foot() == Action.Foot.GAIN);
    }
}
