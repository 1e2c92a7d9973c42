package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.phrase.Change;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** The arm goes out before the foot. */
public final class FootBeforeHand extends RefusalRule {

    public FootBeforeHand() {
        super(new RuleText(
                "foot-before-hand",
                Severity.ERROR,
                false,
                "The arm extends before the lunge or with it, never on a later count.",
                "An attack begins with the arm (Technical Rules t.9.1, t.83.2); a foot that lands first brings"
                        + " the body within reach without a threat (Waite 1880, p. 23-24).",
                """
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
                        """,
                """
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
                        "The arm extends on " + fault.where() + ", after the foot has lunged.",
                        fault.ways()
                                .or("lunge here, with the arm, not before it", Change.lungedHere())
                                .sentence())
                : Sentence.none();
    }
}
