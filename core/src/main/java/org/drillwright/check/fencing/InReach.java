package org.drillwright.check.fencing;

import java.util.Optional;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.phrase.Attempt;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;

/** A touch is made within the measure. */
public final class InReach extends RefusalRule {

    public InReach() {
        super(new RuleText(
                "in-reach",
                Severity.ERROR,
                true,
                "A touch is within the measure that the feet have left: nobody is touched by an arm at lunge distance, or after a"
                        + " step out of reach, and nobody steps on to a lunge that reaches.",
                "Who cannot reach leans, throws the arm or runs; who is too near bends the blade hard.",
                """
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Parry quarte with a retreat.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Hold the lunge and take the touch.
                            follower: Riposte straight to the high inside line.
                        #             ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^
                            distance: lunge
                            safety: Stop the point on the jacket.
                          - leader: Recover on guard in sixte.
                            follower: Advance on guard in sixte.
                            distance: lunge
                          - leader: Extend to the high inside line and lunge.
                            follower: Retreat and take the touch.
                        #                         ^^^^^^^^^^^^^^
                            distance: lunge
                            safety: Stop the point on the jacket.
                          - leader: Recover on guard in sixte.
                            follower: Advance on guard in sixte.
                            distance: lunge
                          - leader: Extend to the high inside line.
                            follower: Take the touch.
                        #             ^^^^^^^^^^^^^^
                            distance: lunge
                            safety: Stop the point on the jacket.
                          - leader: Extend to the high inside line and lunge.
                            follower: Advance and take the touch.
                        #             ^^^^^^^
                            distance: lunge
                            safety: Stop the point on the jacket.
                        """,
                """
                        steps:
                          - leader: Extend to the high inside line and lunge.
                            follower: Parry quarte with a retreat.
                            distance: lunge
                            safety: Arrive softly and let the blade bend.
                          - leader: Hold the lunge and take the touch.
                            follower: Riposte to the high inside line with a lunge.
                            distance: lunge to extension
                            safety: Stop the point on the jacket.
                          - leader: Recover on guard in sixte.
                            follower: Recover forward on guard in sixte.
                            distance: extension to lunge
                        """));
    }

    @Override
    protected Optional<Sentence> say(Fault fault, Subject subject) {
        if (fault.refusal() instanceof Refusal.OutOfReach reach) {
            String how = reach.lunges() ? "even with the lunge it ends at " : "it is made at ";
            String out = wayOut(reach, fault, fault.attempt());
            return Sentence.error("This cannot touch: " + how + reach.measure().words() + ".", out);
        }
        if (fault.refusal() instanceof Refusal.LungeTooClose) {
            return Sentence.warning(
                    "This riposte lunges from extension distance.",
                    "The arm alone reaches; a lunge from so near bends the blade hard.");
        }
        if (fault.refusal() instanceof Refusal.RunsOn) {
            return Sentence.error(
                    "The " + fault.by().word() + " steps on to the point of a lunge that reaches without that step.",
                    "Let the one step and the other lunge on counts of their own, or parry with the step.");
        }
        return Sentence.none();
    }

    private static String wayOut(Refusal.OutOfReach reach, Fault fault, Attempt attempt) {
        if (reach.lunged()) {
            return "Recover first, or let the partner stay nearer.";
        }
        Action lunge = new Action.Lunge(Action.Depth.FULL, Aim.UNSTATED);
        Action advance = new Action.Step(Action.Foot.ADVANCE, 1);
        boolean byLunge = !reach.lunges() && fault.wouldPlay(move -> attempt.playsWith(move, lunge, false));
        boolean byStep = fault.wouldPlay(move -> attempt.playsWith(move, advance, true));
        if (byLunge) {
            return "Add a lunge, or come nearer first.";
        }
        return byStep ? "Advance first, or begin nearer." : "Begin nearer.";
    }
}
