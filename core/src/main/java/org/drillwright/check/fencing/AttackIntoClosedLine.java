package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.WaysOut;
import org.drillwright.notation.Aim;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** An attack goes where the blade does not stand. */
public final class AttackIntoClosedLine extends RefusalRule {

    public AttackIntoClosedLine() {
        super(new RuleText(AttackIntoClosedLine.class, "attack-into-closed-line", Severity.ERROR, false));
    }

    @Override
    protected boolean restsOnBothTurns() {
        return true;
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (!(fault.refusal() instanceof Refusal.ClosedLine closed)) {
            return Sentence.none();
        }
        Message line = Terms.of(closed.line());
        Message other = Terms.of(fault.by().other());
        Message what = closed.guard()
                .map(position -> Message.of(
                        AttackIntoClosedLine.class, "attack-into-closed-line.guard", line, other, Terms.of(position)))
                .orElseGet(
                        () -> Message.of(AttackIntoClosedLine.class, "attack-into-closed-line.contact", line, other));
        WaysOut ways = fault.ways();
        closed.open().forEach(open -> ways.or(Terms.of(open), Amendment.at(Aim.at(open))));
        return Sentence.error(
                what,
                ways.sentence(lines -> Message.of(AttackIntoClosedLine.class, "attack-into-closed-line.aim", lines)));
    }
}
