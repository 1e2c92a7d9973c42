package org.drillwright.phrase;

import java.util.List;
import java.util.Set;
import org.drillwright.notation.Action;
import org.drillwright.notation.Action.Foot;
import org.drillwright.notation.Action.Reply;
import org.drillwright.notation.Action.Trifle;
import org.drillwright.notation.Clause;
import org.drillwright.notation.Doubt;
import org.drillwright.notation.Stance;

/**
 * Who keeps the measure goes back as far as the partner comes on, and comes on as far as the partner goes back; told beside
 * another action it says no more than how that is done.
 */
final class MeasureKept {

    private MeasureKept() {}

    /** A turn's clauses, with the steps that the partner's turn asks for. */
    static List<Clause> played(List<Clause> own, List<Clause> partner) {
        if (own.stream().noneMatch(MeasureKept::follows)) {
            return own;
        }
        boolean alone = own.stream().allMatch(clause -> follows(clause) || isStill(clause.action()));
        return own.stream()
                .map(clause -> !follows(clause)
                        ? clause
                        : alone ? followed(clause, partner) : clause.with(new Action.Aside(Trifle.OTHER)))
                .toList();
    }

    private static Clause followed(Clause clause, List<Clause> partner) {
        int halfSteps = 0;
        boolean clear = true;
        for (Clause other : partner) {
            if (other.action() instanceof Action.Step step) {
                halfSteps += step.foot().halfSteps() * step.times();
                clear = clear && other.isCertain();
            } else {
                clear = clear && !movesOtherwise(other);
            }
        }
        if (!clear || halfSteps % 2 != 0) {
            return new Clause(
                    new Action.Step(Foot.RETREAT, 1),
                    clause.subject(),
                    clause.span(),
                    clause.join(),
                    Set.of(Doubt.STEPS));
        }
        int steps = halfSteps / 2;
        return clause.with(
                steps == 0
                        ? new Action.Answer(Reply.HOLD, Stance.UNSTATED)
                        : new Action.Step(steps > 0 ? Foot.RETREAT : Foot.ADVANCE, Math.abs(steps)));
    }

    /** Whether the feet may go somewhere by another thing than a step. */
    private static boolean movesOtherwise(Clause clause) {
        return !clause.isCertain()
                || clause.action() instanceof Action.Unread
                || clause.action() instanceof Action.Lunge
                || clause.action() instanceof Action.Recover
                || clause.action() instanceof Action.Withdraw;
    }

    private static boolean follows(Clause clause) {
        return clause.action().isReply(Reply.FOLLOW);
    }

    private static boolean isStill(Action action) {
        return action instanceof Action.Aside
                || action instanceof Action.State
                || action.isReply(Reply.HOLD)
                || action.isReply(Reply.WAIT);
    }
}
