package org.drillwright.check.form;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Utterance;

/** Tells which actions of a turn belong together as one. */
final class JoinedActions {

    /** The parts that a count's one action may consist of; each may come once. */
    private enum Part {
        STEP,
        BLADE,
        INVITATION,
        ARM,
        STROKE,
        LUNGE,
        DEFENCE,
        EVASION,
        STANCE,
        RECOVERY,
        TAKING,
        COURTESY
    }

    private static final List<Set<Part>> WHOLES = List.of(
            EnumSet.of(Part.STEP, Part.BLADE, Part.INVITATION, Part.ARM, Part.STROKE, Part.LUNGE),
            EnumSet.of(Part.STEP, Part.DEFENCE, Part.STANCE),
            EnumSet.of(Part.STEP, Part.EVASION, Part.STANCE),
            // The leg is slipped and the arm cut at (Hutton, Cold Steel, 1889, 'the slip'; from memory).
            EnumSet.of(Part.STEP, Part.EVASION, Part.ARM, Part.STROKE),
            EnumSet.of(Part.STEP, Part.STANCE, Part.BLADE),
            EnumSet.of(Part.STANCE, Part.INVITATION),
            EnumSet.of(Part.RECOVERY, Part.BLADE, Part.STANCE),
            // Out of the lunge and out of reach in one going back (common practice, no source).
            EnumSet.of(Part.RECOVERY, Part.STEP, Part.STANCE),
            EnumSet.of(Part.TAKING, Part.BLADE),
            EnumSet.of(Part.TAKING, Part.STANCE),
            // A parry that was deceived.
            EnumSet.of(Part.TAKING, Part.DEFENCE),
            EnumSet.of(Part.TAKING, Part.STEP),
            EnumSet.of(Part.TAKING, Part.RECOVERY),
            EnumSet.of(Part.COURTESY, Part.STANCE, Part.STEP));

    private JoinedActions() {}

    /**
     * The clauses that are too many; empty if the turn is one action, or one joined action where that is allowed.
     *
     * @param stopped whether the partner's turn is a stop hit or a time hit, which is taken in the middle of an attack
     */
    static List<Clause> surplus(Utterance turn, boolean joined, boolean stopped) {
        List<Clause> surplus = new ArrayList<>();
        boolean takesStop = joined && stopped;
        Set<Part> parts = EnumSet.noneOf(Part.class);
        Optional<Clause> before = Optional.empty();
        for (Clause clause : turn.clauses()) {
            boolean doubled = before.filter(one -> isDoubleChange(one, clause)).isPresent();
            before = Optional.of(clause);
            if (doubled) {
                continue;
            }
            Optional<Part> part = part(clause.action());
            if (takesStop && part.equals(Optional.of(Part.TAKING))) {
                continue;
            }
            if (part.isPresent()
                    && !arrives(clause.action(), parts)
                    && (!fits(parts, part.get(), joined) || goesOn(clause, parts))) {
                surplus.add(clause);
            }
            part.ifPresent(parts::add);
        }
        return surplus;
    }

    /** A double change of engagement is told by the same words as the one before it, and is one thing. */
    private static boolean isDoubleChange(Clause first, Clause second) {
        return first.span().equals(second.span()) && changes(first.action()) && changes(second.action());
    }

    private static boolean changes(Action action) {
        return action instanceof Action.OnBlade blade && blade.contact() == Action.Contact.CHANGE_ENGAGEMENT;
    }

    /** A step forward that comes behind a stroke, a parry, a recovery or a guard, not with it, is a thing of its own. */
    private static boolean goesOn(Clause clause, Set<Part> parts) {
        boolean behind = parts.contains(Part.STROKE)
                || parts.contains(Part.LUNGE)
                || parts.contains(Part.DEFENCE)
                || parts.contains(Part.EVASION)
                || parts.contains(Part.RECOVERY)
                || parts.contains(Part.STANCE);
        boolean follows = clause.join() == Clause.Join.AND || clause.join() == Clause.Join.COMMA;
        return behind
                && follows
                && clause.action() instanceof Action.Step step
                && step.foot().halfSteps() > 0;
    }

    /** 'Lunge and hit': that the lunge arrives is no second thing, at any level. */
    private static boolean arrives(Action action, Set<Part> parts) {
        return parts.equals(EnumSet.of(Part.LUNGE))
                && action instanceof Action.Strike strike
                && strike.role() == Action.Role.ATTACK
                && (strike.path() == Action.Path.UNSTATED || strike.path() == Action.Path.DIRECT)
                && !strike.feint();
    }

    private static boolean fits(Set<Part> parts, Part next, boolean joined) {
        if (parts.isEmpty() || (parts.size() == 1 && parts.contains(Part.STANCE) && next == Part.STANCE)) {
            return true;
        }
        if (!joined || parts.contains(next)) {
            return isBareGuard(parts, next);
        }
        Set<Part> together = EnumSet.copyOf(parts);
        together.add(next);
        return WHOLES.stream().anyMatch(whole -> whole.containsAll(together));
    }

    /** To land on guard is no second thing. */
    private static boolean isBareGuard(Set<Part> parts, Part next) {
        return next == Part.STANCE && (parts.contains(Part.STEP) || parts.contains(Part.RECOVERY));
    }

    private static Optional<Part> part(Action action) {
        return action.match(new Action.Cases<Optional<Part>>() {
            @Override
            public Optional<Part> step(Action.Step step) {
                return Optional.of(Part.STEP);
            }

            @Override
            public Optional<Part> lunge(Action.Lunge lunge) {
                return Optional.of(Part.LUNGE);
            }

            @Override
            public Optional<Part> recover(Action.Recover recover) {
                return Optional.of(Part.RECOVERY);
            }

            @Override
            public Optional<Part> onGuard(Action.OnGuard onGuard) {
                return Optional.of(Part.STANCE);
            }

            @Override
            public Optional<Part> withdraw(Action.Withdraw withdraw) {
                return Optional.of(Part.STEP);
            }

            @Override
            public Optional<Part> stand(Action.Stand stand) {
                return Optional.of(Part.STANCE);
            }

            @Override
            public Optional<Part> strike(Action.Strike strike) {
                return Optional.of(strike.role() == Action.Role.EXTENSION ? Part.ARM : Part.STROKE);
            }

            @Override
            public Optional<Part> parry(Action.Parry parry) {
                return Optional.of(Part.DEFENCE);
            }

            @Override
            public Optional<Part> place(Action.Place place) {
                return Optional.of(Part.STANCE);
            }

            @Override
            public Optional<Part> onBlade(Action.OnBlade onBlade) {
                return Optional.of(Part.BLADE);
            }

            @Override
            public Optional<Part> invite(Action.Invite invite) {
                return Optional.of(Part.INVITATION);
            }

            @Override
            public Optional<Part> evade(Action.Evade evade) {
                return Optional.of(Part.EVASION);
            }

            @Override
            public Optional<Part> answer(Action.Answer answer) {
                return answer.reply() == Action.Reply.RECEIVE ? Optional.of(Part.TAKING) : Optional.empty();
            }

            @Override
            public Optional<Part> salute(Action.Salute salute) {
                return Optional.of(Part.COURTESY);
            }

            @Override
            public Optional<Part> mask(Action.Mask mask) {
                return Optional.of(Part.COURTESY);
            }

            @Override
            public Optional<Part> state(Action.State state) {
                return Optional.empty();
            }

            @Override
            public Optional<Part> aside(Action.Aside aside) {
                return Optional.empty();
            }

            @Override
            public Optional<Part> unread(Action.Unread unread) {
                return Optional.empty();
            }
        });
    }
}
