package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.model.Level;
import org.drillwright.notation.Action;
import org.drillwright.notation.Stance;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** Two lunges never meet in one count. */
public final class BothLungeAtOnce extends RefusalRule {

    public BothLungeAtOnce() {
        super(new RuleText(BothLungeAtOnce.class, "both-lunge-at-once", Severity.ERROR, true));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (!(fault.refusal() instanceof Refusal.BothLunge)) {
            return Sentence.none();
        }
        boolean warned = subject.drill().cautions().stream()
                .flatMap(caution -> subject.reader().doneByBoth(caution).stream())
                .anyMatch(Action.Lunge.class::isInstance);
        if (warned && subject.level().turns() == Level.Turns.FREE) {
            return Sentence.none();
        }
        Action takes = new Action.Answer(Action.Reply.RECEIVE, Stance.UNSTATED);
        return Sentence.error(
                Message.of(BothLungeAtOnce.class, "both-lunge-at-once.both", fault.where()),
                fault.ways()
                        .or(Message.of(BothLungeAtOnce.class, "both-lunge-at-once.alone"), Amendment.onItsOwn())
                        .or(
                                Message.of(BothLungeAtOnce.class, "both-lunge-at-once.take-and-alone"),
                                Amendment.onItsOwn(takes))
                        .told(ways -> ways.get(0).sentence()));
    }
}
