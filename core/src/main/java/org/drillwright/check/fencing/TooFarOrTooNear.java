package org.drillwright.check.fencing;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.drillwright.check.Fault;
import org.drillwright.check.RefusalRule;
import org.drillwright.check.RuleText;
import org.drillwright.check.Sentence;
import org.drillwright.check.Subject;
import org.drillwright.check.WayOut;
import org.drillwright.check.Ways;
import org.drillwright.notation.Action;
import org.drillwright.notation.Aim;
import org.drillwright.notation.Measure;
import org.drillwright.notation.Stance;
import org.drillwright.phrase.Change;
import org.drillwright.phrase.Refusal;
import org.drillwright.source.Severity;
import org.drillwright.wording.Message;

/** A touch is made within the measure. */
public final class TooFarOrTooNear extends RefusalRule {

    public TooFarOrTooNear() {
        super(new RuleText(
                "too-far-or-too-near",
                Severity.ERROR,
                true,
                "A touch is within reach of the distance the footwork has left: nobody is touched by the arm"
                        + " alone from lunge distance or after a step out of reach, and nobody steps on to a"
                        + " lunge that already reaches or to where the partner is standing.",
                "A fencer who cannot reach leans, throws the arm or runs; one who is too close bends the blade hard.",
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
            return Sentence.error("This cannot touch: " + how + reach.measure().words() + ".", nearer(fault, subject));
        }
        if (fault.refusal() instanceof Refusal.LungeTooClose) {
            return Sentence.warning(
                    "This riposte lunges from extension distance, where the arm alone reaches; a lunge from so"
                            + " close bends the blade hard.",
                    fault.ways()
                            .or("leave out the lunge", Change.without(Action.Lunge.class::isInstance))
                            .sentence());
        }
        if (fault.refusal() instanceof Refusal.NoRoom) {
            return Sentence.error(
                    "There is no room for this: it ends where the "
                            + fault.by().other().word() + " is standing.",
                    fault.ways()
                            .or("leave out the steps", Change.without(Action.Step.class::isInstance))
                            .or("leave out the lunge", Change.without(Action.Lunge.class::isInstance))
                            .or(
                                    "let the " + fault.by().other().word() + " step back",
                                    Change.partnerFirst(new Action.Step(Action.Foot.RETREAT, 1)))
                            .sentence());
        }
        if (fault.refusal() instanceof Refusal.RunsOn) {
            return Sentence.error(
                    "The " + fault.by().word() + " steps on to the point of a lunge that would reach without"
                            + " that step.",
                    fault.ways()
                            .or("leave out the step", Change.without(Action.Step.class::isInstance))
                            .or("parry with the step", Change.parries(Change::also))
                            .sentence());
        }
        return Sentence.none();
    }

    /** The step that is lacking, of the one who is too far away or of the other; or a start from nearer. */
    private static WayOut nearer(Fault fault, Subject subject) {
        Action lunge = new Action.Lunge(Action.Depth.FULL, Aim.UNSTATED);
        Action advance = new Action.Step(Action.Foot.ADVANCE, 1);
        Action recover = new Action.Recover(Action.Way.FORWARD, Stance.UNSTATED);
        Predicate<Action> away =
                action -> action instanceof Action.Step step && step.foot().halfSteps() < 0;
        boolean takes = fault.before().attackOn(fault.by()).isPresent();
        Ways ways = fault.ways();
        if (takes) {
            ways.or("do not go back", Change.without(away))
                    .or("let the " + fault.by().other().word() + " lunge", Change.partnerAlso(lunge));
        } else {
            ways.or("add a lunge", Change.with(lunge))
                    .or("advance first", Change.before(advance))
                    .or(
                            "recover forward first, and lunge",
                            (words, spot) -> Change.with(lunge)
                                    .made(Change.before(recover).made(words, spot), spot))
                    .or("let the " + fault.by().other().word() + " stay", Change.partnerWithout(away));
        }
        Map<Message, Change> starts = new LinkedHashMap<>();
        for (int steps = subject.replay().start().measure().least() - 1; steps >= 0; steps--) {
            Measure measure = Measure.of(steps);
            starts.put(Message.plain("begin at " + measure.word() + " distance"), Change.begunAt(measure));
        }
        return ways.orFirst(starts).sentence();
    }
}
