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
        super(RuleText.of(AttackIntoClosedLine.class, "attack-into-closed-line", Severity.ERROR, false, """
                        steps:
                          - leader: Extend to the high outside line and lunge.
                        #           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            follower: Parry sixte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: lunge
                        """, """
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Parry quarte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: lunge
                        """));
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
