package org.drillwright.check.safety;

import java.util.Optional;
import org.drillwright.check.Intent;
import org.drillwright.check.Rule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Subject;
import org.drillwright.model.Level;
import org.drillwright.notation.Action;
import org.drillwright.notation.Clause;
import org.drillwright.source.Findings;
import org.drillwright.source.Severity;
import org.drillwright.source.Written;
import org.drillwright.wording.Message;

/** A level without blade work crosses no blades and points at nobody. */
public final class BeyondTheLevel implements Rule {

    private static final RuleText TEXT = new RuleText(BeyondTheLevel.class, "beyond-the-level", Severity.ERROR, true);

    @Override
    public RuleText text() {
        return TEXT;
    }

    @Override
    public void judge(Subject subject, Findings findings) {
        if (subject.level().blades() != Level.Blades.NONE) {
            return;
        }
        for (Subject.Place turn : subject.turns()) {
            Optional<Clause> first = subject.turn(turn.step(), turn.side()).clauses().stream()
                    .filter(clause -> breaks(subject, clause))
                    .findFirst();
            if (first.isPresent()) {
                report(subject, subject.turnWords(turn.step(), turn.side()), first.get(), findings);
            }
        }
    }

    /** Without a partner there is nobody to point at and no blade to parry, but a blade cannot be met alone either. */
    private static boolean breaks(Subject subject, Clause clause) {
        return subject.isPartnerDrill()
                ? Intent.isOffensive(clause) || Intent.isOnBlade(clause)
                : clause.action() instanceof Action.OnBlade;
    }

    private static void report(Subject subject, Written words, Clause clause, Findings findings) {
        findings.error(
                TEXT.id(),
                words.span(clause.span()),
                Message.of(
                        BeyondTheLevel.class,
                        "beyond-the-level.what",
                        subject.level().name()),
                Message.of(BeyondTheLevel.class, "beyond-the-level.way"));
    }
}
