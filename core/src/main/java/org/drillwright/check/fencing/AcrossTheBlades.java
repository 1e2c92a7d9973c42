package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.WayOut;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** Between blades that touch nothing goes straight to the other side. */
public final class AcrossTheBlades extends RefusalRule {

    public AcrossTheBlades() {
        super(new RuleText(AcrossTheBlades.class, "across-the-blades", Severity.ERROR, false));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (!(fault.refusal() instanceof Refusal.AcrossTheBlades across)) {
            return Sentence.none();
        }
        if (!across.sure()) {
            return Sentence.warning(
                    touch(across, "unsaid"),
                    ways(
                            fault,
                            Message.of(
                                    AcrossTheBlades.class,
                                    "across-the-blades.say-disengage",
                                    subject.typed(AcrossTheBlades.class, "typed.by-disengage")),
                            Message.of(
                                    AcrossTheBlades.class,
                                    "across-the-blades.say-cut-over",
                                    subject.typed(AcrossTheBlades.class, "typed.by-cut-over"))));
        }
        return across.opposition()
                ? Sentence.error(
                        touch(across, "opposition"),
                        fault.ways()
                                .or(
                                        Message.of(AcrossTheBlades.class, "across-the-blades.in-contact"),
                                        Amendment.at(Aim.at(across.contact())))
                                .sentence())
                : Sentence.error(
                        touch(across, "through"),
                        ways(
                                fault,
                                Message.of(AcrossTheBlades.class, "across-the-blades.disengage"),
                                Message.of(AcrossTheBlades.class, "across-the-blades.cut-over")));
    }

    private static Message touch(Refusal.AcrossTheBlades across, String fault) {
        return Message.of(
                AcrossTheBlades.class,
                "across-the-blades." + (across.beaten() ? "beat." : "touch.") + fault,
                Terms.of(across.contact()),
                Terms.of(across.named()));
    }

    /** Those ways round the blade or past it that play. */
    private static WayOut ways(Fault fault, Message disengage, Message cutOver) {
        Action beat = new Action.OnBlade(Action.Contact.BEAT, Optional.empty(), Aim.UNSTATED);
        return fault.ways()
                .or(disengage, Amendment.along(Action.Path.DISENGAGE))
                .or(cutOver, Amendment.along(Action.Path.CUT_OVER))
                .or(Message.of(AcrossTheBlades.class, "across-the-blades.beat-first"), Amendment.before(beat))
                .sentence();
    }
}
