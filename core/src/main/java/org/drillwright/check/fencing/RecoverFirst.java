package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.notation.Stance;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** Nobody does from the lunge what needs a recovery. */
public final class RecoverFirst extends RefusalRule {

    public RecoverFirst() {
        super(new RuleText(
                "recover-first",
                Severity.ERROR,
                false,
                "Nobody advances, retreats or lunges again from a lunge that is not recovered, and nobody recovers who has"
                        + " not lunged.",
                "From the lunge the feet can only come back or come up.",
                """
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Parry quarte.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Retreat.
                        #           ^^^^^^^
                            follower: Recover from the lunge on guard in sixte.
                        #             ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            distance: extension to lunge
                        """,
                """
                        steps:
                          - leader: Extend to the high inside line and lunge.
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
        if (fault.refusal() instanceof Refusal.NothingToRecover) {
            return Sentence.warning(
                    "The " + fault.by().word() + " is not on the lunge, so there is nothing to recover from.",
                    "Write 'return to guard', or the lunge that this recovers from.");
        }
        if (!(fault.refusal() instanceof Refusal.NotRecovered still)) {
            return Sentence.none();
        }
        return Sentence.error(
                "The " + fault.by().word() + " " + still.what() + " from a lunge that is not recovered.",
                way(recovers(fault, Action.Way.FORWARD), recovers(fault, Action.Way.BACK)));
    }

    private static boolean recovers(Fault fault, Action.Way way) {
        Action recover = new Action.Recover(way, Stance.UNSTATED);
        return fault.wouldPlay(move -> fault.attempt().playsAfter(fault.by(), recover, move));
    }

    private static String way(boolean forward, boolean back) {
        if (forward && back) {
            return "Recover first, forward or back.";
        }
        return forward ? "Recover forward first." : back ? "Recover back first." : "";
    }
}
