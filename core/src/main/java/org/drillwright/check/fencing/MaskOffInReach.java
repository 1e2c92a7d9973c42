package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.WayOut;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action;
import org.drillwright.phrase.Amendment;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.terms.Terms;
import org.drillwright.wording.Message;

/** No point goes to a person whose mask is off. */
public final class MaskOffInReach extends RefusalRule {

    public MaskOffInReach() {
        super(new RuleText(MaskOffInReach.class, "mask-off-in-reach", Severity.ERROR, true));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (fault.refusal() instanceof Refusal.Unmasked unmasked) {
            boolean first = subject.faults().stream()
                    .filter(other -> other.refusal() instanceof Refusal.Unmasked)
                    .findFirst()
                    .filter(fault::equals)
                    .isPresent();
            Action mask = new Action.Mask(true);
            return first
                    ? Sentence.error(
                            Message.of(
                                    MaskOffInReach.class,
                                    "mask-off-in-reach." + stroke(unmasked, subject),
                                    Terms.of(unmasked.who())),
                            fault.ways()
                                    .or(
                                            Message.of(
                                                    MaskOffInReach.class,
                                                    "mask-off-in-reach.write-on",
                                                    subject.typed(MaskOffInReach.class, "typed.masks-on")),
                                            Amendment.openedBy(mask))
                                    .sentence())
                    : Sentence.none();
        }
        if (fault.refusal() instanceof Refusal.MaskOffInReach reach) {
            WayOut wayOut = fault.ways()
                    .or(
                            Message.of(
                                    MaskOffInReach.class,
                                    "mask-off-in-reach.step-back",
                                    subject.typed(MaskOffInReach.class, "typed.step-back")),
                            Amendment.before(new Action.Withdraw()))
                    .told(steps -> steps.get(0).capital());
            Message measure = reach.measure().words();
            return reach.inPlay()
                    ? Sentence.error(Message.of(MaskOffInReach.class, "mask-off-in-reach.comes-off", measure), wayOut)
                    : Sentence.note(
                            Message.of(MaskOffInReach.class, "mask-off-in-reach.comes-off-at-rest", measure), wayOut);
        }
        return Sentence.none();
    }

    /** At sabre a stroke of which nothing is said may be either. */
    private static String stroke(Refusal.Unmasked unmasked, Subject subject) {
        boolean sabre = subject.drill().weapon() == Weapon.SABRE;
        return unmasked.edge() ? "edge" : sabre ? "stroke" : "point";
    }
}
