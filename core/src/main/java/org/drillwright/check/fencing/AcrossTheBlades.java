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
import org.drillwright.phrase.Change;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** Between blades that touch nothing goes straight to the other side. */
public final class AcrossTheBlades extends RefusalRule {

    public AcrossTheBlades() {
        super(new RuleText(
                "across-the-blades",
                Severity.ERROR,
                false,
                "While the blades touch, a straight thrust stays on the side of contact; to reach the other"
                        + " side, disengage, cut over, or beat the blade away first.",
                "A straight thrust goes in the line of the engagement (Warford 1884, p. 17-19); to reach the"
                        + " other side it would have to go through the partner's blade.",
                """
                        start: On guard in sixte, engaged, at lunge distance.
                        steps:
                          - leader: Thrust straight to the high inside line with a lunge.
                        #           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            follower: Parry quarte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte, engaged.
                            follower: Return to guard in sixte, engaged.
                            distance: lunge
                        """,
                """
                        start: On guard in sixte, engaged, at lunge distance.
                        steps:
                          - leader: Disengage to the high inside line and lunge.
                            follower: Parry quarte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte, engaged.
                            follower: Return to guard in sixte, engaged.
                            distance: lunge
                        """));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (!(fault.refusal() instanceof Refusal.AcrossTheBlades across)) {
            return Sentence.none();
        }
        String touch = (across.beaten() ? "The beat meets the blade in " : "The blades touch in ")
                + Sentence.the(across.contact()) + ", and this goes to " + Sentence.the(across.named());
        if (!across.sure()) {
            return Sentence.warning(
                    touch + ", and the turn does not say how it passes the blade.",
                    ways(fault, "say 'by disengage'", "say 'by cut-over'"));
        }
        return across.opposition()
                ? Sentence.error(
                        touch + ": a hit with opposition stays on the side of the blade it opposes.",
                        fault.ways()
                                .or("hit in the line of contact", Change.at(Aim.at(across.contact())))
                                .sentence())
                : Sentence.error(
                        touch + ": one blade would have to go through the other.",
                        ways(fault, "disengage", "cut over"));
    }

    /** Those ways round the blade or past it that play. */
    private static WayOut ways(Fault fault, String disengage, String cutOver) {
        Action beat = new Action.OnBlade(Action.Contact.BEAT, Optional.empty(), Aim.UNSTATED);
        return fault.ways()
                .or(disengage, Change.along(Action.Path.DISENGAGE))
                .or(cutOver, Change.along(Action.Path.CUT_OVER))
                .or("beat the blade away first", Change.before(beat))
                .sentence();
    }
}
