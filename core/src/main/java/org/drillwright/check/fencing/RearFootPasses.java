package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** At sabre the rear foot does not pass the front one. */
public final class RearFootPasses extends RefusalRule {

    public RearFootPasses() {
        super(new RuleText(RearFootPasses.class, "rear-foot-passes", Severity.ERROR, false));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        return fault.refusal() instanceof Refusal.RearFootPasses
                ? Sentence.error(
                        Message.of(RearFootPasses.class, "rear-foot-passes.what"),
                        fault.ways()
                                .or(
                                        Message.of(RearFootPasses.class, "rear-foot-passes.advance"),
                                        Amendment.each(RearFootPasses::advanced))
                                .or(
                                        Message.of(RearFootPasses.class, "rear-foot-passes.lunge"),
                                        Amendment.each(RearFootPasses::lunged))
                                .sentence())
                : Sentence.none();
    }

    private static Action advanced(Action action) {
        return action instanceof Action.Step step && step.foot() == Action.Foot.CROSS_FORWARD
                ? new Action.Step(Action.Foot.ADVANCE, step.times())
                : action;
    }

    private static Action lunged(Action action) {
        return action instanceof Action.Lunge lunge ? new Action.Lunge(Action.Depth.FULL, lunge.aim()) : action;
    }
}
