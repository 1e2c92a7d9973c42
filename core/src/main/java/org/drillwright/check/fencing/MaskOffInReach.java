package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.model.Weapon;
import org.drillwright.notation.Action;
import org.drillwright.phrase.Change;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** No point goes to a person whose mask is off. */
public final class MaskOffInReach extends RefusalRule {

    public MaskOffInReach() {
        super(new RuleText(
                "mask-off-in-reach",
                Severity.ERROR,
                true,
                "No point or edge is aimed at anybody whose mask is off; masks come off only out of distance.",
                "No practice without masks (Warford 1884, p. 6; Technical Rules t.20.2).",
                """
                        opening: Salute. On guard in sixte.
                        steps:
                          - leader: Extend to the high inside line and lunge.
                        #           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            follower: Parry quarte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: lunge
                        """,
                """
                        opening: Salute. Masks on. On guard in sixte.
                        """));
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
                            stroke(unmasked, subject) + " is aimed at the "
                                    + unmasked.who().word() + ", whose mask is off.",
                            fault.ways()
                                    .or(
                                            "write 'Masks on' into the opening, before coming on guard",
                                            Change.openedBy(mask))
                                    .sentence())
                    : Sentence.none();
        }
        if (fault.refusal() instanceof Refusal.MaskOffInReach reach) {
            return Sentence.error(
                    "Masks come off at " + reach.measure().words() + ".",
                    fault.ways()
                            .or(
                                    "step back out of distance first: 'Step back out of distance. Masks off.'",
                                    Change.before(new Action.Withdraw()))
                            .told(steps -> steps.get(0).capital()));
        }
        return Sentence.none();
    }

    /** At sabre a stroke of which nothing is said may be either. */
    private static String stroke(Refusal.Unmasked unmasked, Subject subject) {
        boolean sabre = subject.drill().weapon() == Weapon.SABRE;
        return unmasked.edge() ? "An edge" : sabre ? "A stroke" : "A point";
    }
}
