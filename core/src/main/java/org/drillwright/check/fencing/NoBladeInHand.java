package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Intent;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/** Blade work needs a weapon. */
public final class NoBladeInHand implements Rule {

    private static final RuleText TEXT = new RuleText(NoBladeInHand.class, "no-blade-in-hand", Severity.ERROR, false);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        if (subject.drill().weapon() != Weapon.NONE) {
            return;
        }
        for (Subject.Place turn : subject.turns()) {
            Optional<Clause> first = subject.turn(turn.step(), turn.side()).clauses().stream()
                    .filter(clause -> Intent.isSurelyDone(clause) && isBladeWork(clause.action(), subject))
                    .findFirst();
            Written words = subject.turnWords(turn.step(), turn.side());
            first.ifPresent(clause -> findings.error(
                    TEXT.id(),
                    words.span(clause.span()),
                    Message.of(NoBladeInHand.class, "no-blade-in-hand.what"),
                    Message.of(NoBladeInHand.class, "no-blade-in-hand.way")));
        }
    }

    private static boolean isBladeWork(Action action, Subject subject) {
        if (action instanceof Action.Strike strike) {
            boolean bareArm =
                    strike.role() == Action.Role.EXTENSION && !strike.aim().isStated();
            return !bareArm && (strike.role() != Action.Role.EXTENSION || subject.isPartnerDrill());
        }
        return action instanceof Action.OnBlade || action instanceof Action.Parry;
    }
}
