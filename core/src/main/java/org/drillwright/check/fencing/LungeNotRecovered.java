package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.notation.Stance;
import org.drillwright.phrase.Change;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** Nobody does from the lunge what needs a recovery. */
public final class LungeNotRecovered extends RefusalRule {

    public LungeNotRecovered() {
        super(new RuleText(
                "lunge-not-recovered",
                Severity.ERROR,
                false,
                "Nobody advances, retreats or lunges again from a lunge without recovering, and nobody recovers"
                        + " without having lunged.",
                "From the lunge the feet can only recover, backward or forward.",
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
                    "The " + fault.by().word() + " is not in a lunge, so there is nothing to recover from.",
                    fault.ways()
                            .or("write 'return to guard'", Change.each(LungeNotRecovered::returned))
                            .sentence());
        }
        if (!(fault.refusal() instanceof Refusal.NotRecovered still)) {
            return Sentence.none();
        }
        return Sentence.error(
                "The " + fault.by().word() + " " + still.what() + " from the lunge without recovering.",
                fault.ways()
                        .or("forward", recovered(Action.Way.FORWARD))
                        .or("back", recovered(Action.Way.BACK))
                        .told(ways -> Message.plain(
                                ways.size() > 1
                                        ? "Recover first, forward or back."
                                        : "Recover " + ways.get(0) + " first.")));
    }

    private static Change recovered(Action.Way way) {
        return Change.before(new Action.Recover(way, Stance.UNSTATED));
    }

    private static Action returned(Action action) {
        return action instanceof Action.Recover recover ? new Action.OnGuard(recover.stance()) : action;
    }
}
