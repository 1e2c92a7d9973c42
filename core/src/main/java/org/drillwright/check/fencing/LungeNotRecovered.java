package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.notation.Stance;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.ConstantName;
import org.drillwright.wording.Message;

/** Nobody does from the lunge what needs a recovery. */
public final class LungeNotRecovered extends RefusalRule {

    public LungeNotRecovered() {
        super(new RuleText(LungeNotRecovered.class, "lunge-not-recovered", Severity.ERROR, false));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (fault.refusal() instanceof Refusal.NothingToRecover) {
            return Sentence.warning(
                    Message.of(LungeNotRecovered.class, "lunge-not-recovered.nothing", Terms.of(fault.by())),
                    fault.ways()
                            .or(
                                    Message.of(
                                            LungeNotRecovered.class,
                                            "lunge-not-recovered.write-return",
                                            subject.typed(LungeNotRecovered.class, "typed.return")),
                                    Amendment.each(LungeNotRecovered::returned))
                            .sentence());
        }
        if (!(fault.refusal() instanceof Refusal.NotRecovered still)) {
            return Sentence.none();
        }
        return Sentence.error(
                Message.of(
                        LungeNotRecovered.class,
                        "lunge-not-recovered." + ConstantName.hyphened(still.what()),
                        Terms.of(fault.by())),
                fault.ways()
                        .or(
                                Message.of(LungeNotRecovered.class, "lunge-not-recovered.first.forward"),
                                recovered(Action.Way.FORWARD))
                        .or(
                                Message.of(LungeNotRecovered.class, "lunge-not-recovered.first.back"),
                                recovered(Action.Way.BACK))
                        .told(ways -> ways.size() > 1
                                ? Message.of(LungeNotRecovered.class, "lunge-not-recovered.first.either")
                                : ways.get(0)));
    }

    private static Amendment recovered(Action.Way way) {
        return Amendment.before(new Action.Recover(way, Stance.UNSTATED));
    }

    private static Action returned(Action action) {
        return action instanceof Action.Recover recover ? new Action.OnGuard(recover.stance()) : action;
    }
}
