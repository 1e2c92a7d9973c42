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
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** A riposte follows one's own parry. */
public final class RiposteWithoutParry extends RefusalRule {

    public RiposteWithoutParry() {
        super(new RuleText(RiposteWithoutParry.class, "riposte-without-parry", Severity.ERROR, false));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (!(fault.refusal() instanceof Refusal.NoParryBefore none)) {
            return Sentence.none();
        }
        return none.counter()
                ? Sentence.error(
                        Message.of(RiposteWithoutParry.class, "riposte-without-parry.counter", Terms.of(fault.by())),
                        fault.ways()
                                .or(
                                        Message.of(RiposteWithoutParry.class, "riposte-without-parry.riposte-first"),
                                        Amendment.parries(Amendment::before))
                                .or(
                                        Message.of(RiposteWithoutParry.class, "riposte-without-parry.riposte-before"),
                                        Amendment.parries(parry -> Amendment.nearby(-1, parry)))
                                .or(
                                        Message.of(RiposteWithoutParry.class, "riposte-without-parry.call-riposte"),
                                        Amendment.as(Action.Role.RIPOSTE))
                                .or(
                                        Message.of(RiposteWithoutParry.class, "riposte-without-parry.call-attack"),
                                        Amendment.as(Action.Role.ATTACK))
                                .sentence())
                : Sentence.error(
                        Message.of(RiposteWithoutParry.class, "riposte-without-parry.riposte", Terms.of(fault.by())),
                        fault.ways()
                                .or(
                                        Message.of(RiposteWithoutParry.class, "riposte-without-parry.parry-first"),
                                        Amendment.parries(Amendment::before))
                                .or(
                                        Message.of(RiposteWithoutParry.class, "riposte-without-parry.parry-before"),
                                        Amendment.parries(parry -> Amendment.nearby(-1, parry)))
                                .or(
                                        Message.of(RiposteWithoutParry.class, "riposte-without-parry.call-attack"),
                                        Amendment.as(Action.Role.ATTACK))
                                .sentence());
    }
}
