package org.drillwright.check.fencing;

import java.util.List;
import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.WaysOut;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Target;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** A touch goes to the weapon's target. */
public final class OffTarget extends RefusalRule {

    public OffTarget() {
        super(new RuleText(OffTarget.class, "off-target", Severity.ERROR, false));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (!(fault.refusal() instanceof Refusal.OffTarget off)) {
            return Sentence.none();
        }
        WaysOut ways = fault.ways();
        for (Target target : List.of(Target.HEAD, Target.CHEST, Target.SHOULDER, Target.FLANK, Target.BELLY)) {
            Aim aim = new Aim(Optional.empty(), Optional.empty(), Optional.of(target));
            ways.or(Terms.of(target), Amendment.at(aim));
        }
        return Sentence.error(
                Message.of(
                        OffTarget.class,
                        "off-target.what",
                        Terms.of(off.target()),
                        Terms.of(subject.drill().weapon())),
                ways.sentence(places -> Message.of(OffTarget.class, "off-target.choose", places)));
    }
}
