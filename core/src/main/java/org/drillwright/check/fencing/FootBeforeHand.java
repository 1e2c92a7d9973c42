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
        super(RuleText.of(FootBeforeHand.class, "foot-before-hand", Severity.ERROR, false, """
                        steps:
                          - leader: Lunge.
                            follower: Hold on guard.
                            distance: lunge
                          - leader: Extend the arm to the high inside line.
                        #           ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            follower: Parry quarte.
                            distance: extension
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: extension to lunge
                        """, """
                        steps:
                          - leader: Extend the arm to the high inside line.
                            follower: Hold on guard.
                            distance: lunge
                            safety: Point at the jacket, never higher.
                          - leader: Lunge.
                            follower: Parry quarte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Recover on guard in sixte.
                            follower: Return to guard in sixte.
                            distance: extension to lunge
                        """));
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
