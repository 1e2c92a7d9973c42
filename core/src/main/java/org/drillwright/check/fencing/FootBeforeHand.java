package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** The arm goes out before the foot. */
public final class FootBeforeHand extends RefusalRule {

    public FootBeforeHand() {
        super(new RuleText(FootBeforeHand.class, "foot-before-hand", Severity.ERROR, false));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        return fault.refusal() instanceof Refusal.FootBeforeHand
                ? Sentence.error(
                        Message.of(FootBeforeHand.class, "foot-before-hand.after", fault.where()),
                        fault.ways()
                                .or(
                                        Message.of(FootBeforeHand.class, "foot-before-hand.lunge-here"),
                                        Amendment.lungedHere())
                                .sentence())
                : Sentence.none();
    }
}
